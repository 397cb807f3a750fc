//! Ways in which a value of a TOML file can be wrong.

use toml::Value;

/// A step to a value.
#[derive(Debug, Clone)]
pub(crate) enum Step {
    Key(String),
    Item(usize),
}

/// How a value becomes another one; none where the way does not fit it.
pub(crate) type Change = fn(&Value) -> Option<Value>;

fn number(value: &Value, change: impl Fn(f64) -> f64) -> Option<Value> {
    let changed = change(value.as_float().or_else(|| value.as_integer().map(|i| i as f64))?);
    if value.is_integer() && changed.is_finite() && changed.abs() < 9e15 {
        return Some(Value::Integer(changed.round() as i64)).filter(|v| v != value);
    }
    Some(Value::Float(changed)).filter(|v| v != value)
}

/// Every way, with its name. The last one, none, leaves the value out.
pub(crate) const WAYS: [(&str, Option<Change>); 17] = [
    ("times 1.02", Some(|v| number(v, |x| x * 1.02))),
    ("zero", Some(|v| number(v, |_| 0.0))),
    ("other sign", Some(|v| number(v, |x| -x))),
    ("times 10", Some(|v| number(v, |x| x * 10.0))),
    ("a tenth", Some(|v| number(v, |x| x / 10.0))),
    ("inches for mm", Some(|v| number(v, |x| x / 25.4))),
    ("one more", Some(|v| number(v, |x| x + 1.0))),
    ("not a number", Some(|v| number(v, |_| f64::NAN))),
    ("infinite", Some(|v| number(v, |_| f64::INFINITY))),
    ("huge", Some(|v| number(v, |_| 1e300))),
    ("tiny", Some(|v| number(v, |_| 1e-300))),
    ("half", Some(|v| number(v, |x| x / 2.0))),
    ("words for a value", Some(|v| (!v.is_str()).then(|| Value::String("many".to_owned())))),
    ("no words", Some(|v| v.is_str().then(|| Value::String(String::new())))),
    ("other words", Some(|v| v.as_str().map(|s| Value::String(other(s))))),
    ("the other truth", Some(|v| v.as_bool().map(|b| Value::Boolean(!b)))),
    ("left out", None),
];

/// Another word of the same kind where there is one, else one that means nothing.
fn other(word: &str) -> String {
    let kinds: [&[&str]; 6] = [
        &["target", "rear_left_wheel", "rear_right_wheel", "front_left_wheel", "front_right_wheel", "floor", "nose"],
        &["thrust_line", "rear_axle_normal", "centreline"],
        &["distance", "lateral_offset", "height", "yaw", "pitch", "roll"],
        &["nose", "front_axle", "rear_axle"],
        &["brown-conrady", "kannala-brandt"],
        &["successful", "failed"],
    ];
    let kind = kinds.iter().find_map(|k| Some(k[(k.iter().position(|w| *w == word)? + 1) % k.len()]));
    kind.map_or("nonsense".to_owned(), str::to_owned)
}

/// Every place of a file that holds a value or an array.
pub(crate) fn places(value: &Value) -> Vec<Vec<Step>> {
    let mut found = Vec::new();
    let below = |step: Step, value: &Value, found: &mut Vec<Vec<Step>>| {
        found.push(vec![step.clone()]);
        found.extend(places(value).into_iter().map(|rest| [vec![step.clone()], rest].concat()));
    };
    match value {
        Value::Table(table) => table.iter().for_each(|(k, v)| below(Step::Key(k.clone()), v, &mut found)),
        Value::Array(items) => items.iter().enumerate().for_each(|(i, v)| below(Step::Item(i), v, &mut found)),
        _ => {}
    }
    found
}

pub(crate) fn words(place: &[Step]) -> String {
    let step = |s: &Step| match s {
        Step::Key(key) => format!(".{key}"),
        Step::Item(item) => format!("[{item}]"),
    };
    place.iter().map(step).collect()
}

/// Changes the value at a place; false where the way does not fit it.
pub(crate) fn change(whole: &mut Value, place: &[Step], change: Option<Change>) -> bool {
    let Some((last, way_there)) = place.split_last() else { return false };
    let mut value = whole;
    for step in way_there {
        value = match step {
            Step::Key(key) => &mut value[key.as_str()],
            Step::Item(item) => &mut value[*item],
        };
    }
    match (value, last, change) {
        (Value::Table(table), Step::Key(key), None) => table.remove(key).is_some(),
        (Value::Array(items), Step::Item(item), None) => {
            items.remove(*item);
            true
        }
        (value, last, Some(change)) => {
            let at = match last {
                Step::Key(key) => &mut value[key.as_str()],
                Step::Item(item) => &mut value[*item],
            };
            change(at).map(|new| *at = new).is_some()
        }
        _ => false,
    }
}
