//! Set-up sheets that the shop types itself. Every figure is typed twice: a
//! wrong one would make a wrong set-up right.

use std::path::PathBuf;

use crate::folder::{Kind, make_folder_durably, write_durably};
use crate::quantity::Quantity;
use crate::setup::{Check, Decision, Evidence, From, Limits, Prerequisite, ReferenceLine, Setup, Waiver};
use crate::web::app::App;
use crate::web::folders::folder;
use crate::web::forms::Fields;
use crate::web::trouble::Trouble;
use crate::words::{Language, Phrase, phrase, say};

/// What a typed sheet may check, in the order of the page.
pub(in crate::web) const QUANTITIES: [Quantity; 6] =
    [Quantity::Distance, Quantity::LateralOffset, Quantity::Height, Quantity::Yaw, Quantity::Pitch, Quantity::Roll];

/// Where a typed distance may start.
pub(in crate::web) const FROM: [&str; 3] = ["nose", "front_axle", "rear_axle"];

/// The sheet's file, where the shop typed a sheet of this name.
pub(in crate::web) fn file(app: &App, sheet: &str) -> Option<PathBuf> {
    let path = folder(app.shelf.root()).join(Kind::Setup.folder()).join(format!("{sheet}.toml"));
    (is_name(sheet) && path.is_file()).then_some(path)
}

/// Keeps the sheet that a form describes; its name.
pub(in crate::web) fn make(app: &App, fields: &Fields, language: Language) -> Result<String, Trouble> {
    let sheet = read(fields, language)?;
    if app.library.now().sheet(&sheet.name).is_some() {
        return Err(Trouble::typed(phrase!("page-trouble-sheet-exists", name = sheet.name)));
    }
    let text = sheet.to_toml();
    Setup::from_toml(&text, &sheet.name)?;
    let shelf = folder(app.shelf.root()).join(Kind::Setup.folder());
    for part in [folder(app.shelf.root()), shelf.clone()] {
        match make_folder_durably(&part) {
            Err(e) if e.kind() != std::io::ErrorKind::AlreadyExists => {
                return Err(Trouble::disk("folder", &e));
            }
            _ => {}
        }
    }
    write_durably(&shelf.join(format!("{}.toml", sheet.name)), text.as_bytes())
        .map_err(|e| Trouble::disk("sheet", &e))?;
    app.library.forget();
    Ok(sheet.name)
}

fn is_name(name: &str) -> bool {
    let plain = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-';
    (3..=60).contains(&name.len()) && name.bytes().all(plain) && !name.starts_with('-')
}

/// The sheet as typed.
fn read(fields: &Fields, language: Language) -> Result<Setup, Trouble> {
    let needed = |name: &'static str| {
        fields.line(name)?.ok_or_else(|| Trouble::typed(phrase!("page-trouble-sheet-needs", field = name)))
    };
    let name = needed("name")?;
    if !is_name(&name) {
        return Err(Trouble::typed(phrase!("page-trouble-sheet-name")));
    }
    let line = fields.get("line").and_then(|l| ReferenceLine::ALL.into_iter().find(|r| r.name() == l));
    let reference_line = line.ok_or_else(|| Trouble::typed(phrase!("page-trouble-choose-line")))?;
    let (mut checks, mut waived) = (Vec::new(), Vec::new());
    for quantity in QUANTITIES {
        match check(fields, quantity)? {
            Some(check) => checks.push(check),
            None => waived.push(Waiver { quantity, because: say!(language, "page-sheet-left-out") }),
        }
    }
    if checks.is_empty() {
        return Err(Trouble::typed(phrase!("page-trouble-sheet-empty")));
    }
    Ok(Setup {
        name,
        title: needed("title")?,
        source: needed("source")?,
        reference_line,
        decision: Decision::default(),
        procedure: None,
        steps: Vec::new(),
        datums: Vec::new(),
        prerequisites: prerequisites(language),
        checks,
        waived,
        limits: Limits::default(),
    })
}

/// A figure that was typed twice, both times alike.
fn twice(fields: &Fields, name: &str, quantity: &Phrase) -> Result<Option<f64>, Trouble> {
    match (fields.number(name)?, fields.number(&format!("{name}:again"))?) {
        (Some(a), Some(b)) if a.to_bits() == b.to_bits() || (a - b).abs() < 1e-9 => Ok(Some(a)),
        (None, None) => Ok(None),
        (Some(_), Some(_)) => Err(Trouble::typed(phrase!("page-trouble-figures-differ", quantity = quantity.clone()))),
        _ => Err(Trouble::typed(phrase!("page-trouble-figure-once", quantity = quantity.clone()))),
    }
}

fn check(fields: &Fields, quantity: Quantity) -> Result<Option<Check>, Trouble> {
    let named = phrase!("verdict-quantity", quantity = quantity.name());
    let nominal = twice(fields, &format!("{}:nominal", quantity.name()), &named)?;
    let tolerance = twice(fields, &format!("{}:tolerance", quantity.name()), &named)?;
    let (nominal, tolerance) = match (nominal, tolerance) {
        (None, None) => return Ok(None),
        (Some(nominal), Some(tolerance)) if tolerance > 0.0 => (nominal, tolerance),
        (Some(_), Some(_)) => return Err(Trouble::typed(phrase!("page-trouble-tolerance-zero", quantity = named))),
        _ => return Err(Trouble::typed(phrase!("page-trouble-figure-alone", quantity = named))),
    };
    let from = match quantity {
        Quantity::Distance => {
            let typed = fields.get("distance:from").filter(|f| FROM.contains(f));
            Some(From::from_name(typed.ok_or_else(|| Trouble::typed(phrase!("page-trouble-choose-start")))?))
        }
        _ => None,
    };
    Ok(Some(Check {
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
    }))
}

/// What goes for every static calibration (common practice, no source); a
/// sheet that is edited by hand may ask for more.
fn prerequisites(language: Language) -> Vec<Prerequisite> {
    let one = |id: &str, text: String| Prerequisite { id: id.to_owned(), text, required: true };
    vec![
        one("tyre_pressures_set", say!(language, "page-asks-tyres")),
        one("vehicle_unloaded", say!(language, "page-asks-empty")),
        one("steering_straight", say!(language, "page-asks-steering")),
        one("suspension_settled", say!(language, "page-asks-settled")),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fields(change: (&str, &str)) -> Fields {
        let mut all = vec![
            ("name", "front-radar-x"),
            ("title", "Front radar"),
            ("source", "Invented for this test"),
            ("line", "thrust_line"),
            ("distance:from", "nose"),
            ("distance:nominal", "1500"),
            ("distance:nominal:again", "1500,0"),
            ("distance:tolerance", "10"),
            ("distance:tolerance:again", "10"),
        ];
        for one in &mut all {
            if one.0 == change.0 {
                one.1 = change.1;
            }
        }
        Fields(all.into_iter().map(|(n, v)| (n.to_owned(), v.to_owned())).collect())
    }

    #[test]
    fn figures_that_differ_make_no_sheet() {
        let sheet = read(&fields(("", "")), Language::German).unwrap();
        assert_eq!((sheet.checks.len(), sheet.waived.len()), (1, 5));
        assert_eq!((sheet.checks[0].lower, sheet.checks[0].upper), (Some(1490.0), Some(1510.0)));
        assert_eq!(Setup::from_toml(&sheet.to_toml(), "x").unwrap(), sheet);
        for change in [
            ("distance:nominal:again", "1050"),
            ("distance:nominal:again", ""),
            ("distance:tolerance", ""),
            ("distance:from", "bumper"),
            ("line", "nose"),
            ("name", "../x"),
            ("source", ""),
        ] {
            assert!(read(&fields(change), Language::English).is_err(), "{change:?}");
        }
        let zero = Fields(
            fields(("", ""))
                .0
                .into_iter()
                .map(|(n, v)| if n.contains("tolerance") { (n, "0".into()) } else { (n, v) })
                .collect(),
        );
        assert!(read(&zero, Language::English).is_err());
    }
}
