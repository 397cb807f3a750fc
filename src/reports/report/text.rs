//! The terminal text: short, aligned, wrapped.

use anstyle::{AnsiColor, Style};
use unicode_width::UnicodeWidthStr;

use super::clean::clean;
use super::figures::{Measured, moment, otherwise, percent, wanted};
use super::label::{Label, reference_line};
use super::procedure::sentences;
use super::todo::{Trust, steps, trust};
use crate::record::{CheckRecord, FirstRecord, JobRecord, Level, ReadingRecord, Verdict};
use crate::words::Language;

/// How the terminal shows text; the door decides.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TextOptions {
    /// Columns to wrap at; fewer than 40 are taken as 40.
    pub width: usize,
    /// Whether ANSI colours are added. No meaning depends on them.
    pub colour: bool,
    /// What it is read in.
    pub language: Language,
}

impl Default for TextOptions {
    fn default() -> Self {
        TextOptions { width: 80, colour: false, language: Language::English }
    }
}

/// A job's result as short text that ends with a line break.
pub fn text(record: &JobRecord, options: &TextOptions) -> String {
    let mut page = Page { out: String::new(), width: options.width.max(40), colour: options.colour };
    heading(&mut page, record);
    first(&mut page, record);
    to_do(&mut page, record);
    checks(&mut page, record);
    track(&mut page, record);
    without_readings(&mut page, record);
    readings(&mut page, record);
    findings(&mut page, record);
    not_checkable(&mut page, record);
    procedure(&mut page, record);
    closing(&mut page, record);
    page.out
}

/// Text under construction.
struct Page {
    out: String,
    width: usize,
    colour: bool,
}

impl Page {
    /// One paragraph: `lead` stands before its first line, later lines align
    /// with the end of the lead.
    fn paragraph(&mut self, style: Style, lead: &str, body: &str) {
        let (lead, body) = (clean(lead), clean(body));
        let hang = lead.width();
        let room = self.width.saturating_sub(hang).max(16);
        let lines = textwrap::wrap(&body, whole_words(room));
        for (i, line) in lines.iter().enumerate() {
            let start = if i == 0 { self.styled(style, &lead) } else { " ".repeat(hang) };
            let row = format!("{start}{line}");
            self.out.push_str(row.trim_end());
            self.out.push('\n');
        }
    }

    /// Lines that are styled as a whole.
    fn strong(&mut self, style: Style, words: &str) {
        for line in textwrap::wrap(&clean(words), whole_words(self.width)) {
            let row = self.styled(style, &line);
            self.out.push_str(&row);
            self.out.push('\n');
        }
    }

    fn styled(&self, style: Style, text: &str) -> String {
        let shown = text.trim_end();
        if !self.colour || shown.is_empty() {
            return text.to_owned();
        }
        let rest = &text[shown.len()..];
        format!("{style}{shown}{style:#}{rest}")
    }

    fn title(&mut self, text: &str) {
        self.out.push('\n');
        self.strong(Style::new().bold(), text);
    }
}

/// A finding's code is not torn apart at its hyphens.
fn whole_words(width: usize) -> textwrap::Options<'static> {
    textwrap::Options::new(width).word_splitter(textwrap::WordSplitter::NoHyphenation)
}

fn pad(text: &str, width: usize) -> String {
    format!("{text}{}", " ".repeat(width.saturating_sub(text.width())))
}

fn colour_of(verdict: Verdict) -> Style {
    let colour = match verdict {
        Verdict::Within => AnsiColor::Green,
        Verdict::Outside => AnsiColor::Red,
        Verdict::NotProven => AnsiColor::Yellow,
        Verdict::Retake => AnsiColor::Magenta,
    };
    Style::new().bold().fg_color(Some(colour.into()))
}

/// A mark that differs without colour.
fn mark(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Within => "[ok]",
        Verdict::Outside => "[X]",
        Verdict::NotProven => "[?]",
        Verdict::Retake => "[again]",
    }
}

fn heading(page: &mut Page, record: &JobRecord) {
    page.strong(Style::new().bold(), &format!("Job {}  {}", record.job, record.sheet.title));
    let c = &record.context;
    let facts: Vec<String> = [
        c.vehicle.clone(),
        c.bay.as_ref().map(|bay| format!("bay {bay}")),
        c.technician.as_ref().map(|name| format!("technician {name}")),
        c.attempt.map(|n| format!("attempt {n}")),
        c.taken.as_deref().map(moment),
        c.kit_upkeep.as_ref().filter(|k| k.survey_overdue == Some(true)).map(|k| format!("marker kit {}", k.words())),
    ]
    .into_iter()
    .flatten()
    .collect();
    if !facts.is_empty() {
        page.paragraph(Style::new(), "", &facts.join(", "));
    }
    page.out.push('\n');
    let verdict = record.verdict;
    let word = format!("{} {}", mark(verdict), verdict.words().to_uppercase());
    page.strong(colour_of(verdict), &word);
    page.paragraph(Style::new(), "", &record.reason);
}

/// The one thing to move first, and how the last move went; what is to be done instead, the verdict's reason says.
fn first(page: &mut Page, record: &JobRecord) {
    let told = |f: &&FirstRecord| !record.positions.is_empty() && (f.check.is_some() || f.last_move.is_some());
    let Some(first) = record.first.as_ref().filter(told) else { return };
    page.title("First");
    page.paragraph(Style::new().bold(), "  ", &first.words);
    if let Some(screw) = &first.screw {
        page.paragraph(Style::new().bold(), "  ", &format!("That is {screw}."));
    }
    if let Some(last) = &first.last_move {
        page.paragraph(Style::new(), "  ", &format!("The last move: {last}."));
    }
}

/// Each position of a stand that was moved.
fn track(page: &mut Page, record: &JobRecord) {
    if record.positions.is_empty() {
        return;
    }
    page.title("Where the stand went (± expanded uncertainty, 95 %)");
    for position in &record.positions {
        let lead = match position.after_move {
            0 => "  first    ".to_owned(),
            n => format!("  {:9}", format!("move {n}")),
        };
        let figures = position.figures.iter().filter_map(|f| {
            let check = record.checks.get(f.check)?;
            let label = Label::of_check(check);
            let m = Measured::new(label.quantity, &check.unit, f.value?, f.expanded_uncertainty).short();
            let words = f.words.as_ref().map_or_else(String::new, |w| format!(" ({w})"));
            Some(format!("{} {m}{words}", label.trade))
        });
        page.paragraph(Style::new(), &lead, &figures.collect::<Vec<_>>().join("; "));
        for turned in &position.turned {
            page.paragraph(Style::new(), &" ".repeat(11), &turned.words);
        }
    }
    let proven = record.positions.last().map(|p| p.proven_by.join(", ")).filter(|p| !p.is_empty());
    let words = proven.unwrap_or_else(|| "no photo".to_owned());
    page.paragraph(Style::new(), "  ", &format!("The last position is shown by {words}."));
}

fn to_do(page: &mut Page, record: &JobRecord) {
    page.title("Do now, in this order");
    for (i, step) in steps(record).iter().enumerate() {
        let lead = format!("{:>3}. ", i + 1);
        page.paragraph(Style::new(), &lead, &format!("{}: {}", step.title, step.words));
    }
}

/// One check as cells.
struct Row {
    verdict: Verdict,
    word: &'static str,
    name: String,
    measured: String,
    wanted: String,
    within: String,
    /// What it would be, where it is not to be trusted.
    otherwise: Vec<String>,
}

fn row(check: &CheckRecord) -> Row {
    let label = Label::of_check(check);
    Row {
        verdict: check.verdict,
        word: word(check),
        name: clean(&label.full()),
        measured: Measured::of_check(check, label.quantity).map_or_else(|| "no value".into(), |m| m.short()),
        wanted: format!("required {}", wanted(check, label.quantity)),
        within: check.conformance_probability.map_or_else(String::new, |p| format!("{} within", percent(p))),
        otherwise: otherwise(check, label.quantity),
    }
}

fn checks(page: &mut Page, record: &JobRecord) {
    let line = reference_line(&record.reference_line);
    page.title(&format!("Checks against {line} (measured ± expanded uncertainty, 95 %)"));
    match trust(record) {
        Trust::None => page.paragraph(Style::new(), "  ", "The figures can't be trusted: see the findings."),
        Trust::Some => page.paragraph(Style::new(), "  ", "Not all figures can be trusted: see the findings."),
        Trust::All => {}
    }
    let rows: Vec<Row> = record.checks.iter().map(row).collect();
    let widest = |cell: fn(&Row) -> &str| rows.iter().map(|r| cell(r).width()).max().unwrap_or(0);
    let verdict = widest(|r| r.word);
    let (name, measured, wanted) = (widest(|r| &r.name), widest(|r| &r.measured), widest(|r| &r.wanted));
    let one_line = 2 + verdict + 2 + name + 2 + measured + 2 + wanted + 2 + "> 99.99 % within".width();
    for r in &rows {
        let lead = format!("  {}  ", pad(r.word, verdict));
        let name = pad(&r.name, name);
        if one_line <= page.width {
            let columns = [name, pad(&r.measured, measured), pad(&r.wanted, wanted), r.within.clone()];
            page.paragraph(colour_of(r.verdict), &lead, &columns.join("  "));
        } else {
            page.paragraph(colour_of(r.verdict), &lead, &format!("{name}  {}", r.measured));
            let odds = if r.within.is_empty() { String::new() } else { format!(", {}", r.within) };
            page.paragraph(Style::new(), &" ".repeat(lead.width() + 2), &format!("{}{odds}", r.wanted));
        }
        for line in &r.otherwise {
            page.paragraph(Style::new(), &" ".repeat(lead.width() + 2), line);
        }
    }
}

/// What the checks would be without the readings that were used.
fn without_readings(page: &mut Page, record: &JobRecord) {
    let Some(without) = &record.checks_without_readings else { return };
    page.title("The same checks from the photos alone");
    let differs = |(with, without): &(&CheckRecord, &CheckRecord)| with.verdict != without.verdict;
    let mut changed = record.checks.iter().zip(without).filter(differs).map(|(_, check)| row(check)).peekable();
    if changed.peek().is_none() {
        page.paragraph(Style::new(), "  ", "The verdicts are the same.");
    }
    for r in changed {
        let lead = format!("  {}  ", r.word);
        page.paragraph(colour_of(r.verdict), &lead, &format!("{}  {}", r.name, r.measured));
    }
}

/// A check's verdict in two words.
fn word(check: &CheckRecord) -> &'static str {
    if check.verdict != Verdict::Outside && !check.untrusted.is_empty() {
        return "not trusted";
    }
    check.verdict.words().trim_end_matches(" tolerance")
}

fn readings(page: &mut Page, record: &JobRecord) {
    if record.readings.is_empty() {
        return;
    }
    page.title("Readings against the photos (± standard uncertainty)");
    for reading in &record.readings {
        let lead = format!("  {}  ", pad(agreement(reading), 14));
        page.paragraph(Style::new(), &lead, &reading_words(reading));
    }
}

fn agreement(reading: &ReadingRecord) -> &'static str {
    match reading.agrees {
        Some(true) => "agrees",
        Some(false) => "disagrees",
        None => "not comparable",
    }
}

fn reading_words(reading: &ReadingRecord) -> String {
    let label = Label::new(&reading.quantity, reading.from.as_deref());
    let show = |value, u| Measured::new(label.quantity, &reading.unit, value, u).short();
    let read = show(reading.value, Some(reading.standard_uncertainty));
    let photos = reading.photo_value.map_or_else(
        || "the photos don't determine it".to_owned(),
        |value| format!("photos {}", show(value, reading.photo_standard_uncertainty)),
    );
    let instrument = reading.instrument.as_deref().unwrap_or("read");
    let used = if reading.used { ", used in the result" } else { "" };
    format!("{}: {instrument} {read}, {photos}{used}", label.full())
}

fn findings(page: &mut Page, record: &JobRecord) {
    if record.findings.is_empty() {
        return;
    }
    page.title("Findings");
    for finding in &record.findings {
        let style = match finding.level {
            Level::Void => colour_of(Verdict::Retake),
            Level::Stop => colour_of(Verdict::Outside),
            Level::Warn => colour_of(Verdict::NotProven),
            Level::Note => Style::new(),
        };
        let lead = format!("  {}  ", pad(level_word(finding.level), 4));
        page.paragraph(style, &lead, &format!("{} ({})", finding.message, finding.code));
    }
}

/// Faults that these photos could not have shown at any size.
fn not_checkable(page: &mut Page, record: &JobRecord) {
    let mut blind: Vec<(&str, &str, Vec<&str>)> = Vec::new();
    for d in record.detectable.iter().filter(|d| d.size.is_none()) {
        let (code, remedy) = (d.code.as_str(), d.remedy.as_deref().unwrap_or("more photos"));
        let at = blind.iter().position(|b| (b.0, b.1) == (code, remedy)).unwrap_or(blind.len());
        if at == blind.len() {
            blind.push((code, remedy, Vec::new()));
        }
        let name = d.carrier.as_deref().filter(|name| !blind[at].2.contains(name));
        blind[at].2.extend(name);
    }
    if blind.is_empty() {
        return;
    }
    page.title("Not checkable with these photos");
    for (code, remedy, carriers) in blind {
        let of = if carriers.is_empty() { String::new() } else { format!(" of {}", carriers.join(", ")) };
        page.paragraph(Style::new(), "  ", &format!("{code}{of}: it takes {remedy}"));
    }
}

/// A level in one word.
fn procedure(page: &mut Page, record: &JobRecord) {
    for (title, sentences) in sentences(record) {
        page.title(title);
        for sentence in sentences {
            page.paragraph(Style::new(), "  ", &sentence);
        }
    }
}

pub(super) fn level_word(level: Level) -> &'static str {
    match level {
        Level::Void => "void",
        Level::Stop => "stop",
        Level::Warn => "warn",
        Level::Note => "note",
    }
}

fn closing(page: &mut Page, record: &JobRecord) {
    page.out.push('\n');
    if !record.sheet.source.is_empty() {
        page.paragraph(Style::new(), "Whose tolerance: ", &record.sheet.source);
    }
    page.paragraph(
        Style::new(),
        "Cautions: ",
        "the vehicle maker's service information and local rules govern. The work is for trained people; lasers and \
         lifted vehicles need their own precautions. This documents a set-up and does not replace the procedure.",
    );
}
