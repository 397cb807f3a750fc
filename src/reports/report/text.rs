//! The terminal text: short, aligned, wrapped.

use anstyle::{AnsiColor, Style};
use unicode_width::UnicodeWidthStr;

use super::clean::clean;
use super::figures::{Measured, moment, otherwise, percent, wanted};
use super::html::symbol::class as verdict_class;
use super::label::{Label, reference_line, upkeep_words};
use super::procedure::sentences;
use super::todo::{Trust, is_said_by_steps, message, steps, trust};
use crate::credentials::summary;
use crate::record::{
    CheckRecord, FindingRecord, FirstRecord, JobRecord, Level, ReadingRecord, Verdict, body_told, told,
};
use crate::verdict::findings::explanation;
use crate::words::{Language, Phrase, Value, phrase, say};

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
    let TextOptions { width, colour, language } = *options;
    let mut page = Page { out: String::new(), width: width.max(40), colour, language };
    heading(&mut page, record);
    first(&mut page, record);
    to_do(&mut page, record);
    checks(&mut page, record);
    track(&mut page, record);
    without_readings(&mut page, record);
    readings(&mut page, record);
    findings(&mut page, record);
    not_checkable(&mut page, record);
    signed(&mut page, record);
    procedure(&mut page, record);
    closing(&mut page, record);
    page.out
}

/// Text under construction.
struct Page {
    out: String,
    width: usize,
    colour: bool,
    language: Language,
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
fn mark(verdict: Verdict, language: Language) -> String {
    format!("[{}]", say!(language, "report-mark", verdict = verdict_class(verdict)))
}

fn heading(page: &mut Page, record: &JobRecord) {
    let language = page.language;
    if record.is_rendered() {
        page.strong(Style::new().bold(), &say!(language, "report-rendered"));
    }
    let job = say!(language, "report-job", job = &record.job);
    page.strong(Style::new().bold(), &format!("{job}  {}", record.sheet.title));
    let c = &record.context;
    let overdue = c.kit_upkeep.as_ref().filter(|k| k.survey_overdue == Some(true));
    let facts: Vec<String> = [
        c.vehicle.clone(),
        c.bay.as_ref().map(|bay| say!(language, "report-fact-bay", bay = bay)),
        c.technician.as_ref().map(|name| say!(language, "report-fact-technician", name = name)),
        c.attempt.map(|n| say!(language, "report-fact-attempt", number = n.to_string())),
        c.taken.as_deref().map(|taken| moment(taken, language)),
        overdue.map(|k| say!(language, "report-fact-kit", upkeep = upkeep_words(k, language))),
    ]
    .into_iter()
    .flatten()
    .collect();
    if !facts.is_empty() {
        page.paragraph(Style::new(), "", &facts.join(", "));
    }
    page.out.push('\n');
    let verdict = record.verdict;
    let word = format!("{} {}", mark(verdict, language), verdict.phrase().say(language).to_uppercase());
    page.strong(colour_of(verdict), &word);
    page.paragraph(Style::new(), "", &told(record.reason_phrase.as_ref(), &record.reason, language));
}

/// The one thing to move first, and how the last move went; what is to be done instead, the verdict's reason says.
fn first(page: &mut Page, record: &JobRecord) {
    let language = page.language;
    let worth_saying = |f: &&FirstRecord| !record.positions.is_empty() && (f.check.is_some() || f.last_move.is_some());
    let Some(first) = record.first.as_ref().filter(worth_saying) else { return };
    page.title(&say!(language, "report-first"));
    page.paragraph(Style::new().bold(), "  ", &told(first.words_phrase.as_ref(), &first.words, language));
    if let Some(screw) = &first.screw {
        let screw = told(first.screw_phrase.as_ref(), screw, language);
        page.paragraph(Style::new().bold(), "  ", &say!(language, "report-by-screw", screw = screw));
    }
    if let Some(last) = &first.last_move {
        let last = told(first.last_move_phrase.as_ref(), last, language);
        page.paragraph(Style::new(), "  ", &say!(language, "report-last-move", last = last));
    }
}

/// Each position of a stand that was moved.
fn track(page: &mut Page, record: &JobRecord) {
    if record.positions.is_empty() {
        return;
    }
    let language = page.language;
    page.title(&say!(language, "report-track-text"));
    let named = |after_move: u32| match after_move {
        0 => say!(language, "report-position-first"),
        n => say!(language, "report-position-move", number = n.to_string()),
    };
    let widest = record.positions.iter().map(|p| named(p.after_move).width()).max().unwrap_or(0);
    for position in &record.positions {
        let lead = format!("  {}  ", pad(&named(position.after_move), widest));
        let figures = position.figures.iter().filter_map(|f| {
            let check = record.checks.get(f.check)?;
            let label = Label::of_check(check, language);
            let m = Measured::new(label.quantity, &check.unit, f.value?, f.expanded_uncertainty, language).short();
            Some(match &f.words {
                Some(words) => {
                    let moved = told(f.words_phrase.as_ref(), words, language);
                    say!(language, "report-figure-moved", name = label.trade, value = m, moved = moved)
                }
                None => say!(language, "report-figure", name = label.trade, value = m),
            })
        });
        page.paragraph(Style::new(), &lead, &figures.collect::<Vec<_>>().join("; "));
        for turned in &position.turned {
            let words = told(turned.words_phrase.as_ref(), &turned.words, language);
            page.paragraph(Style::new(), &" ".repeat(lead.width()), &words);
        }
    }
    let proven = record.positions.last().map(|p| p.proven_by.clone()).unwrap_or_default();
    let words = match proven.is_empty() {
        true => say!(language, "report-last-position-none"),
        false => say!(language, "report-last-position", photos = Value::from(proven)),
    };
    page.paragraph(Style::new(), "  ", &words);
}

fn to_do(page: &mut Page, record: &JobRecord) {
    let language = page.language;
    page.title(&say!(language, "report-do-now"));
    for (i, step) in steps(record, language).iter().enumerate() {
        let lead = format!("{:>3}. ", i + 1);
        let words = say!(language, "report-numbered-step", title = &step.title, words = &step.words);
        page.paragraph(Style::new(), &lead, &words);
        if !step.about.is_empty() {
            page.paragraph(Style::new(), &" ".repeat(lead.width()), &format!("({})", step.about.join(", ")));
        }
    }
}

/// One check as cells.
struct Row {
    verdict: Verdict,
    word: String,
    name: String,
    measured: String,
    wanted: String,
    within: Option<String>,
    /// What it would be, where it is not to be trusted.
    otherwise: Vec<String>,
}

fn row(check: &CheckRecord, language: Language) -> Row {
    let label = Label::of_check(check, language);
    let measured = Measured::of_check(check, label.quantity, language);
    Row {
        verdict: check.verdict,
        word: word(check, language),
        name: clean(&label.full()),
        measured: measured.map_or_else(|| say!(language, "report-no-value"), |m| m.short()),
        wanted: say!(language, "report-required-value", required = wanted(check, label.quantity, language)),
        within: check.conformance_probability.map(|p| within(percent(p), language)),
        otherwise: otherwise(check, label.quantity, language),
    }
}

fn within(probability: Phrase, language: Language) -> String {
    say!(language, "report-probability-short", probability = probability)
}

fn checks(page: &mut Page, record: &JobRecord) {
    let language = page.language;
    let line = reference_line(&record.reference_line);
    page.title(&say!(language, "report-checks-text", line = line));
    let doubt = match trust(record) {
        Trust::None => Some(say!(language, "report-none-trusted")),
        Trust::Some => Some(say!(language, "report-some-trusted")),
        Trust::All => None,
    };
    if let Some(doubt) = doubt {
        page.paragraph(Style::new(), "  ", &format!("{doubt} {}", say!(language, "report-findings-say-why")));
    }
    let rows: Vec<Row> = record.checks.iter().map(|c| row(c, language)).collect();
    let widest = |cell: fn(&Row) -> &str| rows.iter().map(|r| cell(r).width()).max().unwrap_or(0);
    let verdict = widest(|r| &r.word);
    let (name, measured, wanted) = (widest(|r| &r.name), widest(|r| &r.measured), widest(|r| &r.wanted));
    let odds = within(percent(1.0), language).width();
    let one_line = 2 + verdict + 2 + name + 2 + measured + 2 + wanted + 2 + odds;
    for r in &rows {
        let lead = format!("  {}  ", pad(&r.word, verdict));
        let name = pad(&r.name, name);
        let odds = r.within.as_ref();
        if one_line <= page.width {
            let odds = odds.cloned().unwrap_or_default();
            let columns = [name, pad(&r.measured, measured), pad(&r.wanted, wanted), odds];
            page.paragraph(colour_of(r.verdict), &lead, &columns.join("  "));
        } else {
            page.paragraph(colour_of(r.verdict), &lead, &format!("{name}  {}", r.measured));
            let below = odds.map_or_else(
                || r.wanted.clone(),
                |odds| say!(language, "report-required-and-probability", required = &r.wanted, probability = odds),
            );
            page.paragraph(Style::new(), &" ".repeat(lead.width() + 2), &below);
        }
        for line in &r.otherwise {
            page.paragraph(Style::new(), &" ".repeat(lead.width() + 2), line);
        }
    }
}

/// What the checks would be without the readings that were used.
fn without_readings(page: &mut Page, record: &JobRecord) {
    let language = page.language;
    let Some(without) = &record.checks_without_readings else { return };
    page.title(&say!(language, "report-from-photos-alone"));
    let differs = |(with, without): &(&CheckRecord, &CheckRecord)| with.verdict != without.verdict;
    let changed = record.checks.iter().zip(without).filter(differs).map(|(_, check)| row(check, language));
    let mut changed = changed.peekable();
    if changed.peek().is_none() {
        page.paragraph(Style::new(), "  ", &say!(language, "report-same-verdicts"));
    }
    for r in changed {
        let lead = format!("  {}  ", r.word);
        page.paragraph(colour_of(r.verdict), &lead, &format!("{}  {}", r.name, r.measured));
    }
}

/// A check's verdict in two words.
fn word(check: &CheckRecord, language: Language) -> String {
    if check.verdict != Verdict::Outside && !check.untrusted.is_empty() {
        return say!(language, "report-not-trusted-short");
    }
    say!(language, "report-verdict-short", verdict = verdict_class(check.verdict))
}

fn readings(page: &mut Page, record: &JobRecord) {
    if record.readings.is_empty() {
        return;
    }
    let language = page.language;
    page.title(&say!(language, "report-readings-text"));
    let widest = record.readings.iter().map(|r| agreement(r.agrees, language).width()).max().unwrap_or(0);
    for reading in &record.readings {
        let lead = format!("  {}  ", pad(&agreement(reading.agrees, language), widest));
        page.paragraph(Style::new(), &lead, &reading_words(reading, language));
    }
}

/// Whether a reading and the photos agree.
pub(super) fn agreement(agrees: Option<bool>, language: Language) -> String {
    let agreement = match agrees {
        Some(true) => "agrees",
        Some(false) => "disagrees",
        None => "other",
    };
    say!(language, "report-agreement", agreement = agreement)
}

fn reading_words(reading: &ReadingRecord, language: Language) -> String {
    let label = Label::new(&reading.quantity, reading.from.as_deref(), language);
    let show = |value, u| Measured::new(label.quantity, &reading.unit, value, u, language).short();
    let read = show(reading.value, Some(reading.standard_uncertainty));
    let instrument = match &reading.instrument {
        Some(instrument) => phrase!("report-instrument", instrument = instrument),
        None => phrase!("report-read-by"),
    };
    let used = if reading.used { "yes" } else { "no" };
    let name = label.full();
    match reading.photo_value {
        Some(value) => {
            let photos = show(value, reading.photo_standard_uncertainty);
            say!(
                language,
                "report-reading",
                used = used,
                name = name,
                instrument = instrument,
                read = read,
                photos = photos
            )
        }
        None => say!(language, "report-reading-alone", used = used, name = name, instrument = instrument, read = read),
    }
}

fn findings(page: &mut Page, record: &JobRecord) {
    let further: Vec<&FindingRecord> = record.findings.iter().filter(|f| !is_said_by_steps(record, f)).collect();
    if further.is_empty() {
        return;
    }
    let language = page.language;
    page.title(&say!(language, "report-findings"));
    let widest = further.iter().map(|f| level_word(f.level, language).width()).max().unwrap_or(0);
    for finding in further {
        let style = match finding.level {
            Level::Void => colour_of(Verdict::Retake),
            Level::Stop => colour_of(Verdict::Outside),
            Level::Warn => colour_of(Verdict::NotProven),
            Level::Note => Style::new(),
        };
        let lead = format!("  {}  ", pad(&level_word(finding.level, language), widest));
        page.paragraph(style, &lead, &format!("{} ({})", message(finding, language), finding.code));
    }
}

/// Faults that these photos could not have shown at any size.
fn not_checkable(page: &mut Page, record: &JobRecord) {
    let language = page.language;
    let mut blind: Vec<(String, String, Vec<String>)> = Vec::new();
    for d in record.detectable.iter().filter(|d| d.size.is_none()) {
        let remedy = match &d.remedy {
            Some(remedy) => told(d.remedy_phrase.as_ref(), remedy, language),
            None => say!(language, "report-more-photos"),
        };
        let code = explanation(&d.code).map_or_else(|| d.code.clone(), |e| e.title(language));
        let at = blind.iter().position(|b| (&b.0, &b.1) == (&code, &remedy)).unwrap_or(blind.len());
        if at == blind.len() {
            blind.push((code, remedy, Vec::new()));
        }
        let name = d.carrier.as_ref().map(|name| body_told(record, name, language));
        let name = name.filter(|name| !blind[at].2.contains(name));
        blind[at].2.extend(name);
    }
    if blind.is_empty() {
        return;
    }
    page.title(&say!(language, "report-blind-text"));
    for (code, remedy, carriers) in blind {
        let words = match carriers.is_empty() {
            true => say!(language, "report-blind", fault = code, remedy = remedy),
            false => {
                say!(language, "report-blind-of", fault = code, carriers = carriers.join(", "), remedy = remedy)
            }
        };
        page.paragraph(Style::new(), "  ", &words);
    }
}

/// What the cameras signed, in one line.
fn signed(page: &mut Page, record: &JobRecord) {
    let Some(counts) = summary(record.credentials()) else { return };
    let language = page.language;
    page.out.push('\n');
    page.paragraph(Style::new(), "", &say!(language, "report-credentials-of-photos", counts = counts));
}

fn procedure(page: &mut Page, record: &JobRecord) {
    for (title, sentences) in sentences(record, page.language) {
        page.title(&title);
        for sentence in sentences {
            page.paragraph(Style::new(), "  ", &sentence);
        }
    }
}

/// A level in one word.
pub(super) fn level_word(level: Level, language: Language) -> String {
    say!(language, "report-level", level = level_class(level))
}

/// A level's name, which is also its style's.
pub(super) fn level_class(level: Level) -> &'static str {
    match level {
        Level::Void => "void",
        Level::Stop => "stop",
        Level::Warn => "warn",
        Level::Note => "note",
    }
}

fn closing(page: &mut Page, record: &JobRecord) {
    let language = page.language;
    page.out.push('\n');
    if !record.sheet.source.is_empty() {
        let lead = format!("{} ", say!(language, "report-whose-tolerance"));
        page.paragraph(Style::new(), &lead, &record.sheet.source);
    }
    let lead = format!("{} ", say!(language, "report-cautions-text"));
    page.paragraph(Style::new(), &lead, &say!(language, "report-cautions-short"));
    if !language.is_proofread() {
        page.paragraph(Style::new(), "", &say!(language, "report-not-proofread"));
    }
}
