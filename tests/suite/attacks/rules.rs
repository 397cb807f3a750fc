//! Attacks on what decides: the sheet's rule and steps, readings that decide,
//! answers in words, times, writing that shows something else than it says.

use std::fs;
use std::path::Path;

use baywitness::folder::Models;
use baywitness::job::{Options, verify};
use baywitness::record::{JobRecord, Level, Verdict};
use baywitness::words::Language;

use super::{attacked, codes, named, rewrite, sample, stopped};

/// What a proof is called.
const PROVEN: [(Language, &str); 4] = [
    (Language::English, "proven"),
    (Language::German, "nachgewiesen"),
    (Language::French, "preuve"),
    (Language::Spanish, "demostrado"),
];

fn by_simple_rule(job: &Path) {
    rewrite(&job.join("setup.toml"), |text| text.replace("rule = \"guarded\"", "rule = \"simple\""));
}

fn level(record: &JobRecord, code: &str) -> Level {
    record.findings.iter().find(|f| f.code == code).unwrap().level
}

/// A kit that knows nothing of itself, and a rule that does not ask how well a value is known.
#[test]
fn a_simple_rule_with_a_kit_that_knows_nothing() {
    let record = attacked("good", |job| {
        by_simple_rule(job);
        rewrite(&job.join("kit.toml"), |text| {
            let text = text.replace("u_layout_mm = 0.15", "u_layout_mm = 20.0");
            text.replace("u_turn_deg = 0.03", "u_turn_deg = 1.0")
                .replace("u_scale_relative = 0.0003", "u_scale_relative = 0.1")
        });
    });
    assert_eq!(record.verdict, Verdict::NotProven);
    let distance = record.checks.iter().find(|c| c.quantity == "distance").unwrap();
    assert!(distance.value.is_some_and(|v| (1490.0..=1510.0).contains(&v)), "{distance:?}");
    assert!(distance.expanded_uncertainty.is_some_and(|u| u > 10.0) && !distance.can_decide, "{distance:?}");
    assert_eq!(distance.reason_phrase.as_ref().unwrap().key, "advice-too-unsure", "{:?}", record.findings);
    // What nothing here determines is not checkable, and not found from an infinite size on, which no JSON can say.
    let kept = JobRecord::from_json(&record.to_json().unwrap()).unwrap();
    assert_eq!(baywitness::custody::differences(&kept, &record), []);
}

/// The sample's height is 820.64 mm and known to 0.22 (k = 2): one limit stands where the set-up sheet says.
fn with_one_limit(job: &Path, rule: &str, nominal: &str, upper: &str) {
    rewrite(&job.join("setup.toml"), |text| {
        let text = text.replace("rule = \"guarded\"", &format!("rule = \"{rule}\""));
        text.replace("nominal = 820.0\nlower = 815.0\nupper = 825.0", &format!("nominal = {nominal}\nupper = {upper}"))
    });
}

fn height(record: &JobRecord) -> (Verdict, Option<&str>) {
    let check = record.checks.iter().find(|c| c.quantity == "height").unwrap();
    (check.verdict, check.grade.as_deref())
}

/// Simple acceptance by one limit, with a kit that knows nothing: two sides were needed for that to be told.
#[test]
fn a_simple_rule_with_one_limit_and_a_kit_that_knows_nothing() {
    let record = |u_layout_mm: &str| {
        attacked("good", |job| {
            with_one_limit(job, "simple", "815.0", "825.0");
            if u_layout_mm != "0.15" {
                let u = format!("u_layout_mm = {u_layout_mm}");
                rewrite(&job.join("kit.toml"), |text| text.replace("u_layout_mm = 0.15", &u));
            }
        })
    };
    let vague = record("30.0");
    let check = vague.checks.iter().find(|c| c.quantity == "height").unwrap();
    assert!(check.expanded_uncertainty.is_some_and(|u| u > 10.0), "{check:?}");
    assert_eq!((height(&vague).0, check.can_decide), (Verdict::NotProven, false));
    assert_eq!(height(&record("0.15")).0, Verdict::Within);
}

/// A value that is as likely within as not is no pass by the binary rule, and not proven to be outside.
#[test]
fn a_binary_fail_called_a_proof() {
    let at = |upper: &str| attacked("good", |job| with_one_limit(job, "binary", "800.0", upper));
    let record = at("820.6");
    assert_eq!(height(&record), (Verdict::NotProven, Some("fail")));
    assert_eq!(record.verdict, Verdict::NotProven);
    assert_eq!(height(&at("820.0")), (Verdict::Outside, Some("fail")));
    assert_eq!(height(&at("821.5")), (Verdict::Within, Some("pass")));
}

/// What the same rule says of a good kit: the measured value is within, and nobody calls that proven.
#[test]
fn a_simple_rule_called_a_proof() {
    let record = attacked("good", by_simple_rule);
    assert_eq!(record.verdict, Verdict::Within);
    let reason = record.reason_phrase.as_ref().unwrap();
    let guarded = super::judged(&sample("good"));
    for (language, proven) in PROVEN {
        assert!(!reason.say(language).contains(proven), "{}", reason.say(language));
        assert!(guarded.reason_phrase.as_ref().unwrap().say(language).contains(proven), "{language:?}");
    }
}

/// A guarded rule that asks for hardly more than a coin's word, to have "all checks are proven" said of it.
#[test]
fn a_guarded_rule_that_asks_for_little_called_a_proof() {
    let asking = |p: &str| {
        let rule = format!("conformance_probability = {p}");
        attacked_or_refused("good", &rule)
    };
    let refused = asking("0.501").unwrap_err();
    assert!(refused.contains("conformance_probability") && refused.contains("0.8"), "{refused}");
    let record = asking("0.8").unwrap();
    assert_eq!(record.verdict, Verdict::Within);
    let reason = record.reason_phrase.as_ref().unwrap();
    for (language, proven) in PROVEN {
        let said = reason.say(language);
        assert!(!said.contains(proven) && said.contains("80"), "{said}");
    }
    // Who asks for what is called proven gets it, and the kit that knows nothing gets nothing.
    let proven = asking("0.950").unwrap();
    assert!(proven.reason_phrase.unwrap().say(Language::English).contains("proven"));
    let record = attacked("good", |job| {
        rewrite(&job.join("setup.toml"), |text| {
            text.replace("conformance_probability = 0.95", "conformance_probability = 0.8")
        });
        rewrite(&job.join("kit.toml"), |text| text.replace("u_layout_mm = 0.15", "u_layout_mm = 20.0"));
    });
    assert_eq!(record.verdict, Verdict::NotProven);
    let distance = record.checks.iter().find(|c| c.quantity == "distance").unwrap();
    assert!(!distance.can_decide, "{distance:?}");
    assert_eq!(distance.reason_phrase.as_ref().unwrap().key, "advice-too-unsure-likely", "{:?}", record.findings);
}

/// A sample with another probability in its sheet, or what its reader says.
fn attacked_or_refused(name: &str, rule: &str) -> Result<JobRecord, String> {
    let dir = tempfile::tempdir().unwrap();
    let job = dir.path().join("job");
    crate::staged::copy(&sample(name), &job, true);
    rewrite(&job.join("setup.toml"), |text| text.replace("conformance_probability = 0.95", rule));
    verify(&job, &Options::new(Models::embedded())).map_err(|e| e.to_string())
}

/// The sheet lets readings decide what is outside, and the readings are made up.
#[test]
fn a_made_up_reading_that_decides_a_check() {
    let record = attacked("wrong", |job| {
        rewrite(&job.join("setup.toml"), |text| {
            text.replace("quantity = \"distance\"\n", "quantity = \"distance\"\nevidence = \"reading\"\n")
                .replace("quantity = \"yaw\"\n", "quantity = \"yaw\"\nevidence = \"reading\"\n")
        });
        rewrite(&job.join("job.toml"), |text| {
            text.to_owned()
                + "\n[[reading]]\nquantity = \"distance\"\nfrom = \"nose\"\nvalue = 1500.0\nu = 0.5\n\
                   [[reading]]\nquantity = \"yaw\"\nvalue = 0.0\nu = 0.01\n"
        });
    });
    stopped(&record, "reading-disagrees");
    assert_eq!(level(&record, "reading-disagrees"), Level::Stop);
}

/// A sample job with a check that readings alone decide, and these readings.
fn read_tilts(values: [f64; 2]) -> JobRecord {
    attacked("good", |job| {
        rewrite(&job.join("setup.toml"), |text| {
            text.to_owned()
                + "\n[[check]]\nquantity = \"target_tilt_gravity\"\nnominal = 0.0\ntolerance = 0.5\n\
                   evidence = \"reading\"\n"
        });
        let reading = |v: f64| format!("\n[[reading]]\nquantity = \"target_tilt_gravity\"\nvalue = {v:.2}\nu = 0.05\n");
        rewrite(&job.join("job.toml"), |text| text.to_owned() + &values.map(reading).concat());
    })
}

/// A reading that fits stands before the one that does not: the first in the file decided.
#[test]
fn a_second_reading_that_contradicts_the_first() {
    for values in [[0.0, 1.5], [1.5, 0.0]] {
        let record = read_tilts(values);
        stopped(&record, "reading-disagrees");
        assert_eq!(level(&record, "reading-disagrees"), Level::Stop);
        let tilt = record.checks.iter().find(|c| c.quantity == "target_tilt_gravity").unwrap();
        assert_eq!(tilt.verdict, Verdict::NotProven, "{values:?}");
    }
    let agree = read_tilts([0.0, 0.04]);
    assert_eq!((agree.verdict, codes(&agree).contains("reading-disagrees")), (Verdict::Within, false));
}

/// A used reading of which inches were typed: it is named, and no figure hangs on it.
#[test]
fn a_used_reading_that_the_photos_exclude() {
    let typed = |used: bool| {
        attacked("good", |job| {
            let reading = format!(
                "\n[[reading]]\nquantity = \"distance\"\nfrom = \"nose\"\nvalue = 59.06\nu = 1.5\nuse = {used}\n"
            );
            rewrite(&job.join("job.toml"), |text| text.to_owned() + &reading);
        })
    };
    let (record, unused) = (typed(true), typed(false));
    stopped(&record, "reading-disagrees");
    assert_eq!(level(&record, "reading-disagrees"), Level::Stop);
    named(&record, "wrong-datum-suspected");
    assert_eq!(codes(&record), codes(&unused));
    let values = |record: &JobRecord| record.checks.iter().map(|c| c.value).collect::<Vec<_>>();
    assert_eq!(values(&record), values(&unused));
}

/// Neither true nor false, so that nothing counts them.
#[test]
fn a_prerequisite_not_met_said_in_words() {
    let answered = |words: &str| {
        attacked("good", |job| {
            rewrite(&job.join("job.toml"), |text| {
                text.replace("tyre_pressures_set = true", &format!("tyre_pressures_set = \"{words}\""))
            });
        })
    };
    for no in ["no, not done", "nicht geprüft"] {
        let record = answered(no);
        stopped(&record, "prerequisite-not-met");
        assert!(record.findings.iter().any(|f| f.message.contains(no)), "the answer is quoted");
    }
    let record = answered("rear left is flat");
    named(&record, "record-incomplete");
    assert!(record.findings.iter().any(|f| f.message.contains("rear left is flat")));
    assert_eq!(codes(&answered("2.3 bar")).len(), 0);
}

/// The photos of the sample that is wrong before those of the good one, or after: one phone took all of them.
fn moved(job: &Path, first: [&str; 2], then: [&str; 2], calibrated: &str) {
    for name in ["a.jpg", "b.jpg"] {
        fs::copy(sample("wrong").join("photos").join(name), job.join("photos").join(format!("w{name}"))).unwrap();
    }
    let entries = |names: [&str; 2], moves: u32| {
        names.map(|name| format!("[[photo]]\nfile = \"photos/{name}\"\nafter_move = {moves}\n")).concat()
    };
    rewrite(&job.join("job.toml"), |text| {
        let text = text.replace("photos = [\"photos/a.jpg\", \"photos/b.jpg\"]\n", "");
        let text = text.replace("at = 2026-02-03T10:47:30+01:00", &format!("at = {calibrated}"));
        text + "\n" + &entries(first, 0) + &entries(then, 1)
    });
}

/// Calibrated at 10:20, between the photos of 10:12 from before a move of the stand and those of 10:41 after it.
#[test]
fn a_calibration_before_the_stand_was_moved_last() {
    let at =
        |calibrated: &str| attacked("good", |job| moved(job, ["wa.jpg", "wb.jpg"], ["a.jpg", "b.jpg"], calibrated));
    let record = at("2026-02-03T10:20:00+01:00");
    stopped(&record, "times-out-of-order");
    assert_eq!(level(&record, "times-out-of-order"), Level::Stop);
    let honest = at("2026-02-03T10:47:30+01:00");
    assert!(!codes(&honest).contains("times-out-of-order"), "{:?}", codes(&honest));
}

/// Photos whose records have their offset from UTC: older ones are said to be from after a move.
#[test]
fn older_photos_of_known_time_given_as_after_a_move() {
    let record = attacked("good", |job| {
        moved(job, ["a.jpg", "b.jpg"], ["wa.jpg", "wb.jpg"], "2026-02-03T10:47:30+01:00");
    });
    named(&record, "times-out-of-order");
    assert_eq!(level(&record, "times-out-of-order"), Level::Stop);
}

#[test]
fn a_calibration_years_after_the_photos() {
    let at = |calibrated: &str| {
        attacked("good", |job| {
            rewrite(&job.join("job.toml"), |text| text.replace("at = 2026-02-03T10:47:30+01:00", calibrated));
        })
    };
    named(&at("at = 2031-02-03T10:41:05+01:00"), "times-out-of-order");
    assert_eq!(codes(&at("at = 2026-02-03T14:30:00+01:00")).len(), 0, "less than four hours");
}

/// The sheet with a second step that no check is about, and the job's photos with these steps.
fn in_steps(job: &Path, photos: &[(&str, &str)]) {
    rewrite(&job.join("setup.toml"), |text| {
        let text = text.replace("reference_line =", "steps = [\"one\", \"two\"]\nreference_line =");
        text.replace("[[check]]\n", "[[check]]\nstep = \"one\"\n")
    });
    let entry = |(file, step): &(&str, &str)| format!("[[photo]]\nfile = \"photos/{file}\"\nstep = \"{step}\"\n");
    let entries: String = photos.iter().map(entry).collect();
    rewrite(&job.join("job.toml"), |text| {
        text.replace("photos = [\"photos/a.jpg\", \"photos/b.jpg\"]\n", "") + "\n" + &entries
    });
}

/// One photo alone proves nothing; with another one in another step it is alone as well.
#[test]
fn one_photo_for_each_step() {
    let record = attacked("good", |job| in_steps(job, &[("a.jpg", "one"), ("b.jpg", "two")]));
    assert_eq!(record.verdict, Verdict::NotProven, "{}", record.reason);
    let reasons: Vec<&str> =
        record.checks.iter().filter_map(|c| Some(c.reason_phrase.as_ref()?.key.as_str())).collect();
    assert!(!reasons.is_empty() && record.checks.iter().all(|c| c.verdict != Verdict::Within), "{reasons:?}");
    let lacking = |c: &baywitness::record::CheckRecord| {
        c.reason.as_ref().is_some_and(|r| r.contains("one photo of step one") && r.contains("one more photo"))
    };
    assert!(record.checks.iter().any(lacking), "{:?}", record.checks);
    let both = attacked("good", |job| in_steps(job, &[("a.jpg", "one"), ("b.jpg", "one")]));
    assert_eq!(both.verdict, Verdict::Within, "{}", both.reason);
    assert!(!codes(&both).contains("record-incomplete") && codes(&record).contains("record-incomplete"));
}

/// A photo that would contradict is put where nothing is checked.
#[test]
fn a_photo_put_into_a_step_without_checks() {
    let record = attacked("good", |job| {
        fs::copy(sample("wrong").join("photos/a.jpg"), job.join("photos/w.jpg")).unwrap();
        in_steps(job, &[("a.jpg", "one"), ("b.jpg", "one"), ("w.jpg", "two")]);
    });
    named(&record, "record-incomplete");
    let finding = record.findings.iter().find(|f| f.code == "record-incomplete").unwrap();
    assert!(finding.message.contains("photos/w.jpg") && !finding.message.contains("photos/a.jpg"), "{finding:?}");
}

/// `RLO` and its kin show another line than is written, on a terminal, a page and in a PDF.
#[test]
fn writing_that_shows_another_line() {
    let refused = |attack: &dyn Fn(&Path)| {
        let dir = tempfile::tempdir().unwrap();
        let job = dir.path().join("job");
        crate::staged::copy(&sample("good"), &job, true);
        attack(&job);
        verify(&job, &Options::new(Models::embedded())).map(|_| ()).unwrap_err().to_string()
    };
    for turning in ['\u{202a}', '\u{202e}', '\u{2066}', '\u{2069}'] {
        let told = refused(&|job| {
            rewrite(&job.join("job.toml"), |text| {
                text.replace("bay = \"4\"", &format!("bay = \"4{turning}ECNARELOT NIHTIW\""))
            });
        });
        assert!(told.contains("job.toml, line ") && told.contains(": bay: "), "{told}");
        assert!(told.contains("direction of writing") && told.contains("type it anew"), "{told}");
    }
    for unseen in ['\u{200b}', '\u{2028}', '\u{feff}', '\u{e0041}'] {
        let told = refused(&|job| {
            rewrite(&job.join("job.toml"), |text| text.replace("bay = \"4\"", &format!("bay = \"4{unseen}\"")));
        });
        assert!(told.contains(": bay: ") && told.contains("show nothing") && !told.contains(unseen), "{told}");
    }
    // A file's name, listed by nobody.
    let told = refused(&|job| {
        fs::rename(job.join("photos/a.jpg"), job.join("photos/\u{202e}gpj.a.jpg")).unwrap();
        rewrite(&job.join("job.toml"), |text| text.replace("photos = [\"photos/a.jpg\", \"photos/b.jpg\"]\n", ""));
    });
    assert!(told.contains("direction of writing") && told.contains("rename the file"), "{told}");
    assert!(!told.contains('\u{202e}'), "the message turns nothing itself: {told}");
    // Marks that turn nothing but themselves are of use in names of vehicles.
    let record = attacked("good", |job| {
        rewrite(&job.join("job.toml"), |text| text.replace("bay = \"4\"", "bay = \"\u{5d0}\u{200f}4\u{200e}\""));
    });
    assert_eq!(record.verdict, Verdict::Within);
}
