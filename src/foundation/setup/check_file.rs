//! Reading one check of a set-up sheet.

use crate::input::{Error, Table, Value, did_you_mean};
use crate::quantity::{Quantity, Unit};
use crate::words::{Figure, Phrase, phrase};

use super::sheet::{Check, Datum, Evidence, From, ReferenceLine};

/// Millimetres in one inch, exactly (international inch).
pub(super) const MM_PER_INCH: f64 = 25.4;
/// No bay is longer.
const FARTHEST_MM: f64 = 50_000.0;

/// What the sheet declares and checks may name.
pub(super) struct Known<'a> {
    pub(super) datums: &'a [Datum],
    pub(super) steps: &'a [String],
}

/// Reads a check.
pub(super) fn read_check(table: &Table, known: &Known) -> Result<Check, Error> {
    let table = table.clone().allow(&[
        "quantity",
        "from",
        "nominal",
        "tolerance",
        "lower",
        "upper",
        "tolerance_basis",
        "unit",
        "target",
        "reference_line",
        "step",
        "evidence",
    ])?;
    let quantity_value = table.need("quantity")?;
    let quantity = read_quantity(&quantity_value)?;
    let evidence = table
        .maybe("evidence", |v| v.choice("evidence", &[("photos", Evidence::Photos), ("reading", Evidence::Reading)]))?
        .unwrap_or(Evidence::Photos);
    if quantity.is_reading_only() && evidence == Evidence::Photos {
        return Err(quantity_value
            .error(phrase!("doors-not-in-photos", quantity = quantity.name()), phrase!("doors-not-in-photos-remedy")));
    }
    let from = read_from(&table, quantity)?;
    if let Some((problem, remedy)) = unknown_from(from.as_ref(), known.datums) {
        return Err(table.need("from")?.error(problem, remedy));
    }
    let in_inches = read_unit(&table, quantity)?;
    let (nominal, lower, upper) = read_limits(&table, quantity, if in_inches { MM_PER_INCH } else { 1.0 })?;
    Ok(Check {
        quantity,
        from,
        nominal,
        lower,
        upper,
        tolerance_basis: table.maybe("tolerance_basis", Value::text)?,
        in_inches,
        target: table.maybe("target", |v| read_target(v, quantity))?,
        reference_line: table.maybe("reference_line", line)?,
        step: table.maybe("step", |v| read_step(v, quantity, known.steps))?,
        evidence,
    })
}

/// Whether two checks ask for the same thing.
pub(super) fn check_twice(a: &Check, b: &Check, sheet_line: ReferenceLine) -> bool {
    a.quantity == b.quantity
        && a.from == b.from
        && a.target == b.target
        && a.step == b.step
        && a.evidence == b.evidence
        && a.reference_line.unwrap_or(sheet_line) == b.reference_line.unwrap_or(sheet_line)
}

/// The reference line that a value names.
pub(super) fn line(value: &Value) -> Result<ReferenceLine, Error> {
    value.choice("line", &ReferenceLine::ALL.map(|l| (l.name(), l)))
}

/// Reads `from` and checks that it fits the quantity: a distance or range needs
/// one, a comparison with the nose may have a datum instead, nothing else has
/// one. Any other name is taken as a datum's; whether the sheet has it is
/// checked where the sheet is known.
///
/// # Errors
/// Missing or out of place.
pub fn read_from(table: &Table, quantity: Quantity) -> Result<Option<From>, Error> {
    use Quantity as Q;
    let needed = matches!(quantity, Q::Distance | Q::Range);
    let of_nose = matches!(quantity, Q::HeightFromNose | Q::LateralFromNose);
    if needed {
        table.need("from")?;
    }
    let Some(value) = table.get("from") else { return Ok(None) };
    if !needed && !of_nose {
        return Err(value
            .error(phrase!("doors-from-no-point", quantity = quantity.name()), phrase!("doors-from-no-point-remedy")));
    }
    let from = From::from_name(&value.name()?);
    if of_nose && matches!(from, From::FrontAxle | From::RearAxle) {
        return Err(
            value.error(phrase!("doors-from-axle", quantity = quantity.name()), phrase!("doors-from-axle-remedy"))
        );
    }
    Ok(Some(from))
}

/// What is wrong with a point that neither is a standard one nor a datum of
/// the sheet, and the remedy; `None` where it is known.
pub fn unknown_from(from: Option<&From>, datums: &[Datum]) -> Option<(Phrase, Phrase)> {
    let Some(From::Datum(name)) = from else { return None };
    if datums.iter().any(|d| d.name == *name) {
        return None;
    }
    let known = ["nose", "front_axle", "rear_axle"].into_iter().chain(datums.iter().map(|d| d.name.as_str()));
    Some((phrase!("doors-from-unknown", name = name), did_you_mean(name, known)))
}

fn read_unit(table: &Table, quantity: Quantity) -> Result<bool, Error> {
    let Some(value) = table.get("unit") else { return Ok(false) };
    let known = [("mm", (Unit::Millimetre, false)), ("in", (Unit::Millimetre, true)), ("deg", (Unit::Degree, false))];
    let (unit, in_inches) = value.choice("unit", &known)?;
    if unit != quantity.unit() {
        return Err(value.error(
            phrase!("doors-unit-of", quantity = quantity.name(), unit = quantity.unit().symbol()),
            phrase!("doors-unit-of-remedy"),
        ));
    }
    Ok(in_inches)
}

fn read_target(value: &Value, quantity: Quantity) -> Result<String, Error> {
    if !quantity.is_of_target() {
        return Err(value.error(
            phrase!("doors-no-target-here", quantity = quantity.name()),
            phrase!("doors-leave-out", key = "target"),
        ));
    }
    value.name()
}

fn read_step(value: &Value, quantity: Quantity, steps: &[String]) -> Result<String, Error> {
    if !quantity.is_of_target() {
        return Err(value.error(
            phrase!("doors-no-step-here", quantity = quantity.name()),
            phrase!("doors-leave-out", key = "step"),
        ));
    }
    if steps.is_empty() {
        return Err(value.error(phrase!("doors-sheet-no-steps"), phrase!("doors-sheet-no-steps-remedy")));
    }
    value.choice("step", &steps.iter().map(|s| (s.as_str(), s.clone())).collect::<Vec<_>>())
}

type Limits = (f64, Option<f64>, Option<f64>);

/// Nominal and limits in the quantity's own unit; `scale` is what the file's
/// unit is worth in it.
fn read_limits(table: &Table, quantity: Quantity, scale: f64) -> Result<Limits, Error> {
    let most = match quantity.unit() {
        Unit::Millimetre => FARTHEST_MM,
        Unit::Degree => 180.0,
    };
    let unit = if scale > 1.0 { "in" } else { quantity.unit().symbol() };
    let number = |v: &Value| v.within(-most / scale, most / scale, unit);
    let nominal = number(&table.need("nominal")?)?;
    if let Some(tolerance) = table.get("tolerance") {
        if let Some(limit) = table.get("lower").or(table.get("upper")) {
            return Err(limit.error(phrase!("doors-beside-tolerance"), phrase!("doors-beside-tolerance-remedy")));
        }
        let tolerance = tolerance.positive(most / scale, unit)?;
        return Ok((nominal * scale, Some((nominal - tolerance) * scale), Some((nominal + tolerance) * scale)));
    }
    let lower = table.maybe("lower", number)?;
    let upper = table.maybe("upper", number)?;
    if lower.is_none() && upper.is_none() {
        return Err(table.error(phrase!("doors-no-limit"), phrase!("doors-no-limit-remedy")));
    }
    if let (Some(lower), Some(upper)) = (lower, upper)
        && lower >= upper
    {
        let (lower, upper) = (Figure::plain(lower), Figure::plain(upper));
        return Err(table.need("lower")?.error(
            phrase!("doors-limits-order", lower = lower, upper = upper, unit = unit),
            phrase!("doors-limits-order-remedy"),
        ));
    }
    if lower.is_some_and(|l| nominal < l) || upper.is_some_and(|u| nominal > u) {
        return Err(table.need("nominal")?.error(
            phrase!("doors-nominal-outside", nominal = Figure::plain(nominal), unit = unit),
            phrase!("doors-nominal-outside-remedy"),
        ));
    }
    Ok((nominal * scale, lower.map(|l| l * scale), upper.map(|u| u * scale)))
}

/// The quantity that a value names.
///
/// # Errors
/// No quantity of that name: names the nearest one.
pub fn read_quantity(value: &Value) -> Result<Quantity, Error> {
    let choices: Vec<(&str, Quantity)> = Quantity::ALL.iter().map(|q| (q.name(), *q)).collect();
    value.choice("quantity", &choices)
}
