//! `baywitness gauge`: a gauge study of readings by several people.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{complain, language, read_text, tell};
use crate::num::{GaugeMethod, GaugeStudy, Reading, gauge_study};
use crate::words::{Figure, Phrase, phrase, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "FILE.csv")]
    readings: PathBuf,
    #[arg(long, value_enum)]
    method: Option<Method>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
enum Method {
    Range,
    Anova,
}

/// Runs the study; exit code 0, 2 unreadable or not a full table.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match work(arguments) {
        Ok(()) => 0,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn work(typed: &Arguments) -> Result<(), String> {
    let file = typed.readings.display();
    let text = read_text(&typed.readings)?;
    let readings = parse(&text)
        .map_err(|(line, why)| say!(language(), "cli-gauge-line", file = file.to_string(), line = line, why = why))?;
    for (wanted, method) in [(Method::Range, GaugeMethod::AverageAndRange), (Method::Anova, GaugeMethod::Anova)] {
        if typed.method.is_none_or(|m| m == wanted) {
            tell(&words(&gauge_study(&readings, method).map_err(|e| format!("{file}: {}", e.say(language())))?), None);
        }
    }
    Ok(())
}

/// Lines of operator, part, value under a head that names them, in any order of columns;
/// separated as the head is: by semicolons, then numbers may have a decimal comma, else by commas.
fn parse(text: &str) -> Result<Vec<Reading>, (usize, Phrase)> {
    const COLUMNS: [&str; 3] = ["operator", "part", "value"];
    let mut lines = text.lines().enumerate().filter(|(_, l)| !l.trim().is_empty());
    let head = lines.next().map(|(_, l)| l.to_lowercase()).unwrap_or_default();
    let separator = if head.contains(';') { ';' } else { ',' };
    let split = |line: &str| line.split(separator).map(|c| c.trim().to_owned()).collect::<Vec<String>>();
    let head = split(&head);
    let at = COLUMNS.map(|name| head.iter().position(|h| h == name));
    let [Some(operator), Some(part), Some(value)] = at else {
        return Err((1, phrase!("cli-gauge-head")));
    };
    let (mut operators, mut parts) = (Vec::new(), Vec::new());
    let index = |names: &mut Vec<String>, name: &str| {
        names.iter().position(|n| n == name).unwrap_or_else(|| {
            names.push(name.to_owned());
            names.len() - 1
        })
    };
    let mut readings = Vec::new();
    for (i, line) in lines {
        let cells = split(line);
        if cells.len() != head.len() {
            let (found, wanted) = (cells.len(), head.len());
            let separator = separator.to_string();
            return Err((i + 1, phrase!("cli-gauge-cells", found = found, wanted = wanted, separator = separator)));
        }
        let cell = |at: usize| cells.get(at).map_or("", String::as_str);
        let number = if separator == ';' { cell(value).replacen(',', ".", 1) } else { cell(value).to_owned() };
        let number = number.parse::<f64>().ok().filter(|v| v.is_finite());
        let Some(number) = number.filter(|_| !cell(operator).is_empty() && !cell(part).is_empty()) else {
            return Err((i + 1, phrase!("cli-gauge-reading")));
        };
        readings.push(Reading {
            operator: index(&mut operators, cell(operator)),
            part: index(&mut parts, cell(part)),
            value: number,
        });
    }
    Ok(readings)
}

fn words(study: &GaugeStudy) -> String {
    let method = match study.method {
        GaugeMethod::AverageAndRange => phrase!("cli-gauge-range"),
        GaugeMethod::Anova => phrase!("cli-gauge-anova"),
    };
    let deviations = say!(
        language(),
        "cli-gauge-deviations",
        method = method,
        repeatability = Figure::fixed(study.repeatability, 5),
        reproducibility = Figure::fixed(study.reproducibility, 5),
        gauge = Figure::fixed(study.gauge(), 5),
        parts = Figure::fixed(study.parts, 5)
    );
    let percent = Figure::fixed(study.percent(), 2);
    let share = match study.categories() {
        Some(categories) => say!(language(), "cli-gauge-share", percent = percent, categories = categories),
        None => say!(language(), "cli-gauge-untold"),
    };
    format!("{deviations}\n  {share}\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_are_read_in_any_order_of_columns() {
        let readings = parse("Part;Value;Operator\n1;0.5;A\n2;-0.5;B\n\n1;0.25;B\n").unwrap();
        assert_eq!(readings[2], Reading { operator: 1, part: 0, value: 0.25 });
        assert_eq!(parse("a,b\n1,2").unwrap_err(), (1, phrase!("cli-gauge-head")));
        assert_eq!(parse("operator,part,value\nA,1,x").unwrap_err(), (2, phrase!("cli-gauge-reading")));
    }

    #[test]
    fn a_decimal_comma_is_read_where_semicolons_separate_and_refused_elsewhere() {
        let readings = parse("operator;part;value\nA;1;1,1\nA;2;-0,25\n").unwrap();
        assert_eq!(readings[0], Reading { operator: 0, part: 0, value: 1.1 });
        assert_eq!(readings[1], Reading { operator: 0, part: 1, value: -0.25 });
        // Between commas it would be one cell more: the tenths must never be left out.
        let wrong = |text: &str| parse(text).unwrap_err();
        assert_eq!(wrong("operator,part,value\nA,1,1.1\nA,1,1,2").0, 3);
        assert_eq!(wrong("operator,part,value\nA,1").1.key, "cli-gauge-cells");
        assert_eq!(wrong("operator;part;value\nA,1,1.1").1.key, "cli-gauge-cells");
        assert_eq!(wrong("operator;part;value\nA;1;1,000,5").1.key, "cli-gauge-reading");
    }
}
