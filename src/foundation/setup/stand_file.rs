//! The screws of a target stand (`stand/1`): millimetres and degrees as turns.

use crate::input::{Document, Error, Table, Value, Writer};
use crate::quantity::{Quantity, Unit, rounded};
use baywitness_words::{Phrase, phrase};

use super::check_file::read_quantity;

const FORMAT: &str = "stand/1";

/// A stand has a handful.
const MOST_SCREWS: usize = 20;

/// A stand's screws and what each does.
#[derive(Debug, Clone, PartialEq)]
pub struct Stand {
    /// The stand's name.
    pub name: String,
    /// In the file's order.
    pub screws: Vec<Screw>,
}

/// A screw, spindle or crank.
#[derive(Debug, Clone, PartialEq)]
pub struct Screw {
    /// What it is called at the stand.
    pub name: String,
    /// What it is for.
    pub quantity: Quantity,
    /// Change of the quantity by one turn clockwise, mm or degrees; negative where it makes it smaller.
    pub per_turn: f64,
}

impl Stand {
    /// Reads a stand file's text; `file` is its name for messages.
    ///
    /// # Errors
    /// Wrong in any way: names file, line, key and remedy.
    pub fn from_toml(text: &str, file: &str) -> Result<Self, Error> {
        let document = Document::parse(text, file, FORMAT)?;
        let root = document.root().allow(&["format", "name", "screw"])?;
        let tables = root.tables("screw")?;
        if tables.is_empty() || tables.len() > MOST_SCREWS {
            let problem = phrase!("doors-screw-count", count = tables.len());
            return Err(root.error(problem, phrase!("doors-screw-count-remedy", most = MOST_SCREWS)));
        }
        let mut screws: Vec<Screw> = Vec::new();
        for table in tables {
            let screw = read_screw(&table)?;
            if screws.iter().any(|s| s.name == screw.name) {
                let problem = phrase!("doors-named-twice", name = screw.name);
                return Err(table.need("name")?.error(problem, phrase!("doors-screw-twice-remedy")));
            }
            screws.push(screw);
        }
        Ok(Stand { name: root.need("name")?.name()?, screws })
    }

    /// The file's text.
    pub fn to_toml(&self) -> String {
        let mut w = Writer::new(FORMAT);
        w.key("name", self.name.as_str());
        for screw in &self.screws {
            w.item("screw");
            w.key("name", screw.name.as_str());
            w.key("quantity", screw.quantity.name());
            w.key(per_turn_key(screw.quantity), screw.per_turn);
        }
        w.finish()
    }

    /// The screw for a quantity, the first where there are several.
    pub fn screw_for(&self, quantity: Quantity) -> Option<&Screw> {
        self.screws.iter().find(|s| s.quantity == quantity)
    }

    /// The screw of that name.
    pub fn screw(&self, name: &str) -> Option<&Screw> {
        self.screws.iter().find(|s| s.name == name)
    }
}

impl Screw {
    /// Turns of it that change its quantity by so much: "2 1/4 turns of left foot, clockwise"; quarters are what
    /// a hand can tell. `None` where it is less than an eighth.
    pub fn phrase(&self, change: f64) -> Option<Phrase> {
        let turns = change / self.per_turn;
        let quarters = (4.0 * turns.abs()).round();
        if quarters < 1.0 {
            return None;
        }
        let (whole, part) = ((quarters / 4.0).floor(), quarters as u64 % 4);
        let part = ["", "1/4", "1/2", "3/4"][part as usize];
        let number = match (whole, part) {
            (0.0, part) => part.to_owned(),
            (whole, "") => rounded(whole, 0),
            (whole, part) => format!("{} {part}", rounded(whole, 0)),
        };
        let way = if turns > 0.0 { "clockwise" } else { "counter" };
        let amount = if quarters > 4.0 { "several" } else { "one" };
        Some(phrase!("moves-screw", turns = number, amount = amount, screw = &self.name, way = way))
    }
}

fn per_turn_key(quantity: Quantity) -> &'static str {
    match quantity.unit() {
        Unit::Millimetre => "mm_per_turn",
        Unit::Degree => "deg_per_turn",
    }
}

fn read_screw(table: &Table) -> Result<Screw, Error> {
    let table = table.clone().allow(&["name", "quantity", "mm_per_turn", "deg_per_turn"])?;
    let value = table.need("quantity")?;
    let quantity = read_quantity(&value)?;
    if !quantity.is_of_target() || quantity.is_reading_only() {
        let problem = phrase!("doors-screw-quantity", quantity = quantity.name());
        return Err(value.error(problem, phrase!("doors-screw-quantity-remedy")));
    }
    let key = per_turn_key(quantity);
    for other in ["mm_per_turn", "deg_per_turn"].into_iter().filter(|k| *k != key) {
        if let Some(wrong) = table.get(other) {
            let problem = phrase!("doors-screw-unit", quantity = quantity.name(), unit = quantity.unit().symbol());
            return Err(wrong.error(problem, phrase!("doors-screw-unit-remedy", key = key)));
        }
    }
    let per_turn = read_per_turn(&table.need(key)?)?;
    Ok(Screw { name: table.need("name")?.name()?, quantity, per_turn })
}

fn read_per_turn(value: &Value) -> Result<f64, Error> {
    let per_turn = value.within(-500.0, 500.0, "a turn")?;
    if per_turn.abs() < 1e-4 {
        return Err(value.error(phrase!("doors-screw-nothing"), phrase!("doors-screw-nothing-remedy")));
    }
    Ok(per_turn)
}

#[cfg(test)]
mod tests {
    use super::*;
    use baywitness_words::Language;

    const TEXT: &str = "format = \"stand/1\"\nname = \"frame\"\n[[screw]]\nname = \"the left foot\"\nquantity = \"roll\"\ndeg_per_turn = -0.08\n[[screw]]\nname = \"the crank\"\nquantity = \"height\"\nmm_per_turn = 4.0\n";

    #[test]
    fn a_stand_reads_back_as_it_was_written() {
        let stand = Stand::from_toml(TEXT, "stand.toml").unwrap();
        assert_eq!(Stand::from_toml(&stand.to_toml(), "again").unwrap(), stand);
    }

    #[test]
    fn millimetres_become_quarters_of_a_turn() {
        let stand = Stand::from_toml(TEXT, "stand.toml").unwrap();
        let crank = stand.screw_for(Quantity::Height).unwrap();
        // 9 mm at 4 mm a turn: two and a quarter.
        assert_eq!(crank.phrase(9.0).unwrap().say(Language::English), "2 1/4 turns of the crank, clockwise");
        assert_eq!(crank.phrase(-4.0).unwrap().say(Language::English), "1 turn of the crank, counter-clockwise");
        assert_eq!(crank.phrase(3.1).unwrap().say(Language::English), "3/4 turn of the crank, clockwise");
        assert_eq!(crank.phrase(0.3), None);
        // Clockwise makes roll smaller: to make it larger it goes the other way.
        let foot = stand.screw_for(Quantity::Roll).unwrap();
        assert_eq!(foot.phrase(0.16).unwrap().say(Language::English), "2 turns of the left foot, counter-clockwise");
    }

    #[test]
    fn what_is_wrong_is_named_with_its_remedy() {
        let wrong =
            |from: &str, to: &str| Stand::from_toml(&TEXT.replace(from, to), "stand.toml").unwrap_err().to_string();
        assert!(wrong("deg_per_turn = -0.08", "mm_per_turn = 1.0").contains("write deg_per_turn"));
        assert!(wrong("-0.08", "0.0").contains("is nothing"));
        assert!(wrong("\"roll\"", "\"rear_track\"").contains("no figure of a stand"));
        assert!(wrong("the crank", "the left foot").contains("named twice"));
    }
}
