//! Sampled jobs through measuring, deciding and all findings.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use baywitness::detect::{Sighting, Sightings};
use baywitness::folder::{JobFile, Vehicle};
use baywitness::measure::{Ask, Facts, measure};
use baywitness::photo::Exif;
use baywitness::pose::{Options, PhotoView, adjust};
use baywitness::quantity::{Estimate, Quantity};
use baywitness::setup::{Check, Decision, DecisionRule, Evidence, From, Limits, ReferenceLine, Setup};
use baywitness::verdict::findings::{
    Case, Compared, Detectable, Finding, PhotoFacts, alternative_asks, detectable, find, suspects,
};
use baywitness::verdict::{Checked, Sensitivity, StandSize, Verdict, check, more_evidence, sensitivity, settle};

use baywitness::words::{Language, Phrase};

use crate::sampled_bay::{Bay, HUB_MM, Sample};

/// A phrase as its English sentence.
pub(crate) fn en(phrase: &Phrase) -> String {
    phrase.say(Language::English)
}

/// A phrase of a sentence is said in every language: whole, and not in another one's words.
pub(crate) fn assert_told(phrase: &Phrase) {
    let english = en(phrase);
    for language in Language::ALL {
        let said = phrase.known(language).unwrap_or_else(|| panic!("no language knows {phrase:?}"));
        let left_out = ["verdict-", "findings-", "advice-", "moves-", "{"].into_iter().find(|key| said.contains(key));
        assert_eq!(left_out, None, "{}: {said}", language.tag());
        assert!(language == Language::English || said != english, "{}: {said}", language.tag());
    }
}

pub(crate) const LINE: ReferenceLine = ReferenceLine::Centreline;

/// Four photos, plates on four wheels that seat to 0.1 deg, sheets on the floor.
pub(crate) fn bay() -> Bay {
    Bay { four_photos: true, u_seating_mm: 0.5, u_seating_deg: 0.1, toe_deg: 0.07, ..Bay::default() }
}

pub(crate) fn a_check(quantity: Quantity, from: Option<From>, nominal: f64, tolerance: f64) -> Check {
    Check {
        quantity,
        from,
        nominal,
        lower: Some(nominal - tolerance),
        upper: Some(nominal + tolerance),
        tolerance_basis: None,
        in_inches: false,
        target: None,
        reference_line: None,
        step: None,
        evidence: Evidence::Photos,
    }
}

/// A sheet that a sampled stand keeps nearly always.
pub(crate) fn sheet() -> Setup {
    use Quantity as Q;
    Setup {
        name: "sampled".into(),
        title: "Sampled".into(),
        source: "Invented.".into(),
        reference_line: LINE,
        decision: Decision { rule: DecisionRule::Guarded, conformance_probability: 0.95, photos_after_move: 2 },
        procedure: None,
        steps: Vec::new(),
        datums: Vec::new(),
        prerequisites: Vec::new(),
        checks: vec![
            a_check(Q::Distance, Some(From::RearAxle), 5000.0, 40.0),
            a_check(Q::LateralOffset, None, 0.0, 40.0),
            a_check(Q::Height, None, 950.0, 40.0),
            a_check(Q::Yaw, None, 0.0, 1.5),
            a_check(Q::Pitch, None, 0.0, 1.5),
            a_check(Q::Roll, None, 0.0, 1.5),
        ],
        waived: Vec::new(),
        limits: Limits::default(),
        credentials_required: false,
    }
}

pub(crate) fn job() -> JobFile {
    let text = "format = \"job/1\"\njob = \"S\"\nsetup = \"s\"\nkit = \"r\"\n[vehicle]\nwheelbase_mm = 2700.0\n";
    let mut job = JobFile::from_toml(text, "job.toml").unwrap();
    let vehicle: &mut Vehicle = &mut job.vehicle;
    vehicle.floor_below_hub_mm = Some(HUB_MM);
    vehicle.u_floor_below_hub_mm = 3.0;
    job
}

/// What the detector would have said of a sampled photo.
pub(crate) fn sightings(photo: &PhotoView) -> Sightings {
    let markers = photo.views.iter().map(|v| Sighting {
        id: v.id,
        wrong_bits: 0,
        corners_px: v.corners_px,
        corner_valid: v.valid,
        covariance_px2: v.covariance_px2,
        contrast: 0.6,
        blur_px: 0.7,
        warp_px: None,
    });
    Sightings {
        markers: markers.collect(),
        edge_offset_px: 0.0,
        u_edge_offset_px: photo.u_edge_offset_px,
        blur_px: 0.7,
        gain_spread: None,
    }
}

/// How many jobs to draw, times `BAYWITNESS_FINDING_SAMPLES`.
pub(crate) fn samples(usual: u64) -> u64 {
    let times = std::env::var("BAYWITNESS_FINDING_SAMPLES").ok().and_then(|n| n.parse().ok()).unwrap_or(1);
    usual * times
}

/// The photos' names: a.jpg to d.jpg, then by number.
static FILES: LazyLock<Vec<String>> = LazyLock::new(|| {
    let letters = ["a", "b", "c", "d"].map(str::to_owned).into_iter();
    letters.chain((5..=MOST_PHOTOS).map(|i| i.to_string())).map(|name| name + ".jpg").collect()
});
const MOST_PHOTOS: usize = 100;

/// Facts of photos about which nothing is odd.
pub(crate) fn facts<'a>(sightings: &'a [Sightings], exif: &'a Exif) -> Vec<PhotoFacts<'a>> {
    let one = |(s, file): (&'a Sightings, &'a String)| PhotoFacts {
        file,
        exif,
        traces: None,
        sightings: s,
        grain: &[],
        coefficients: &[],
        problem: None,
        sha256: "",
        size_px: [4032, 3024],
        light: None,
        clearness: None,
        mirrored: None,
        credentials: None,
    };
    sightings.iter().zip(FILES.iter()).map(one).collect()
}

pub(crate) struct Judged {
    pub(crate) findings: Vec<Finding>,
    pub(crate) detectable: Vec<Detectable>,
    /// As the figures say.
    pub(crate) checks: Vec<Checked>,
    /// As they stand beside the findings.
    pub(crate) settled: Vec<Checked>,
    pub(crate) sensitivity: Vec<Sensitivity>,
}

impl Judged {
    pub(crate) fn has(&self, code: &str) -> bool {
        self.findings.iter().any(|f| f.code == code)
    }

    /// Codes besides those that only repeat a check.
    pub(crate) fn codes(&self) -> Vec<&'static str> {
        let repeats = |c: &&str| {
            ["turned", "off-centre", "too-near", "too-far", "too-high", "too-low", "tilted", "not-level"]
                .iter()
                .any(|end| **c == format!("stand-{end}"))
        };
        self.findings.iter().map(|f| f.code).filter(|c| !repeats(c)).collect()
    }
}

pub(crate) fn judge(sample: &Sample, setup: &Setup, job: &JobFile) -> Judged {
    judge_readings(sample, setup, job, &[])
}

/// Measures and decides a sampled job. Readings come with their photo values filled in here.
pub(crate) fn judge_readings(sample: &Sample, setup: &Setup, job: &JobFile, readings: &[Compared]) -> Judged {
    let problem = sample.problem();
    let scene = adjust(&problem, &Options::default()).unwrap();
    let known = Facts { kit: &sample.kit, setup, vehicle: &job.vehicle };
    let mut asks: Vec<Ask> = setup
        .checks
        .iter()
        .map(|c| Ask {
            quantity: c.quantity,
            from: c.from.clone(),
            target: 0,
            line: c.reference_line.unwrap_or(setup.reference_line),
        })
        .collect();
    let checks_end = asks.len();
    asks.extend(Quantity::ALL.iter().filter(|q| !q.is_reading_only()).map(|q| Ask {
        quantity: *q,
        from: Some(From::RearAxle),
        target: 0,
        line: setup.reference_line,
    }));
    let measurement = measure(&known, &scene, setup.reference_line, &asks, &[]);
    let size = StandSize { half_width_mm: 760.0, half_height_mm: 245.0 };
    let more = more_evidence(&sample.kit, Some(&scene));
    let checks: Vec<Checked> = setup
        .checks
        .iter()
        .zip(&measurement.answers)
        .map(|(c, answer)| {
            check(c, c.reference_line.unwrap_or(setup.reference_line), &setup.decision, answer.clone(), &size, &more)
        })
        .collect();
    let measured: BTreeMap<String, (Quantity, Estimate)> = asks[checks_end..]
        .iter()
        .zip(&measurement.answers[checks_end..])
        .filter_map(|(ask, a)| Some((ask.quantity.name().to_owned(), (ask.quantity, a.as_ref().ok()?.estimate))))
        .collect();
    let others: Vec<Ask> = setup
        .checks
        .iter()
        .zip(&checks)
        .filter(|(_, c)| c.verdict == Verdict::Outside || !readings.is_empty())
        .flat_map(|(check, c)| alternative_asks(setup, check, 0, c.line))
        .collect();
    let elsewhere: Vec<(Ask, Estimate)> = match others.is_empty() {
        true => Vec::new(),
        false => {
            let more = measure(&known, &scene, setup.reference_line, &others, &[]);
            others.into_iter().zip(more.answers).filter_map(|(ask, a)| Some((ask, a.ok()?.estimate))).collect()
        }
    };
    let sensitivity = sensitivity(&known, &problem, &scene, &asks[..checks_end]);
    let suspects = suspects(&sample.kit, &problem, &scene, &sample.after_move);
    let (seen, exif) = (sample.photos.iter().map(sightings).collect::<Vec<_>>(), Exif::default());
    let case = Case {
        unlisted: &[],
        phases: &[],
        after_move: &sample.after_move,
        kit: &sample.kit,
        setup,
        job,
        photos: &facts(&seen, &exif),
        scene: Some(&scene),
        problem: Some(&problem),
        measurement: Some(&measurement),
        checks: &checks,
        line: setup.reference_line,
        suspects: &suspects,
        readings,
        measured: &measured,
        elsewhere: &elsewhere,
        sensitivity: &sensitivity,
    };
    let by_check: Vec<Vec<Ask>> = asks[..checks_end].iter().map(|a| vec![a.clone()]).collect();
    let (findings, settled) = settle(&case, find(&case), &by_check, &[]);
    let detectable = detectable(&case);
    let judged = Judged { findings, detectable, checks, settled, sensitivity };
    judged.assert_told();
    judged
}

impl Judged {
    /// All that people read of it is said in every language.
    fn assert_told(&self) {
        self.findings.iter().for_each(|f| assert_told(&f.message));
        self.detectable.iter().filter_map(|d| d.remedy.as_ref()).for_each(assert_told);
        for c in self.checks.iter().chain(&self.settled) {
            assert_told(&c.correction);
            c.reason.iter().chain(c.otherwise.iter().map(|o| &o.assuming)).for_each(assert_told);
        }
    }
}
