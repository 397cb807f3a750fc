//! A cell of a table that spreadsheets open: text stays text.
//!
//! A spreadsheet takes a cell that begins with `=`, `+`, `-`, `@`, a tab or a line end for a formula and may run it
//! (OWASP, "CSV Injection"); whoever types a job's number would run it on the auditor's machine. An apostrophe in front
//! makes it text there.

/// What spreadsheets take a formula by.
const STARTS: [char; 7] = ['=', '+', '-', '@', '\t', '\r', '\n'];

/// A cell in which nothing runs. Numbers stay as they are. To read it back: where apostrophes stand before such a
/// character, the first of them is this one's.
pub fn table_cell(text: String) -> String {
    let runs = text.trim_start_matches('\'').starts_with(STARTS);
    if runs && !is_number(&text) { format!("'{text}") } else { text }
}

/// Written in digits: words such as `-inf` are none to a spreadsheet.
fn is_number(text: &str) -> bool {
    text.chars().all(|c| c.is_ascii_digit() || "+-.eE".contains(c)) && text.parse::<f64>().is_ok_and(f64::is_finite)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The rule of docs/formats.
    fn read_back(cell: &str) -> &str {
        let own = cell.trim_start_matches('\'').starts_with(STARTS).then(|| cell.strip_prefix('\'')).flatten();
        own.unwrap_or(cell)
    }

    #[test]
    fn nothing_runs_numbers_stay_and_all_is_read_back() {
        for runs in
            ["=1+1", "+SUM(1)", "-2+3", "@x", "\t=1", "\r=1", "\n=1", "-inf", "'=1", "''@x", "-1e999", "-", "=5"]
        {
            let cell = table_cell(runs.to_owned());
            assert!(cell.starts_with('\''), "{runs:?} became {cell:?}");
            assert_eq!(read_back(&cell), runs);
        }
        for plain in ["", "-1.5", "+2", "-3e-5", "D-0042", "it's", "'quoted'", "a=b", "Ünal", "2026-02-03"] {
            assert_eq!(table_cell(plain.to_owned()), plain);
            assert_eq!(read_back(plain), plain);
        }
    }
}
