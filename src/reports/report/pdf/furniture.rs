//! Head and foot of every page: the job, the page's number, the digest of the
//! result in text and as a QR code.

use qrcodegen::{QrCode, QrCodeEcc};

use super::page::{Draw, LEFT_MM, Mark, PAGE_MM, Pages, WIDTH_MM};
use super::rows::plain_text;
use super::style::{Style, colour};
use crate::typeface::Fonts;
use crate::words::{Language, say};

/// Side of the QR code with its white margin, mm: modules of 0.4 mm, which a
/// phone reads from a hand's length (common practice, no source).
const CODE_MM: f64 = 24.0;
/// White around the code, modules (ISO/IEC 18004, 6.3.8).
const QUIET: i32 = 4;

/// What stands on every page.
pub(super) struct Furniture {
    /// Top left.
    pub(super) title: String,
    /// SHA-512 of the result, lower-case hexadecimal.
    pub(super) digest: String,
    /// What the digest is of.
    pub(super) of: String,
    /// Foot, last line.
    pub(super) maker: String,
    pub(super) language: Language,
}

/// Adds head and foot to all pages.
pub(super) fn furnish(fonts: &Fonts, pages: &mut Pages, furniture: &Furniture) {
    let count = pages.pages.len();
    let code = code(&furniture.digest);
    for (i, page) in pages.pages.iter_mut().enumerate() {
        page.extend(head(fonts, furniture));
        page.extend(foot(fonts, furniture, i + 1, count));
        page.extend(code.clone());
    }
}

fn small() -> Style {
    Style::body().sized(7.6).coloured("muted")
}

fn head(fonts: &Fonts, furniture: &Furniture) -> [Mark; 2] {
    let style = small();
    let title = fitted(fonts, &furniture.title, style, WIDTH_MM);
    let line =
        Draw::Rule { from: [LEFT_MM, 13.0], to: [LEFT_MM + WIDTH_MM, 13.0], colour: colour("rule"), width_mm: 0.2 };
    [plain_text([LEFT_MM, 11.2], style, title), Mark { leaf: None, draw: line }]
}

/// As much of a text as a line holds.
fn fitted(fonts: &Fonts, text: &str, style: Style, width: f64) -> String {
    // No line is longer than this whatever the letters.
    let mut shown: String = text.chars().take(250).collect();
    while fonts.width_mm(&shown, style.weight, style.size_pt) > width {
        shown = shown.chars().take(shown.chars().count().saturating_sub(2)).chain(['…']).collect();
    }
    shown
}

fn foot(fonts: &Fonts, furniture: &Furniture, number: usize, count: usize) -> Vec<Mark> {
    let style = small();
    let page = say!(furniture.language, "report-page-of", page = number, pages = count);
    let edge = LEFT_MM + WIDTH_MM - CODE_MM - 4.0;
    let right = edge - fonts.width_mm(&page, style.weight, style.size_pt);
    let (first, second) = furniture.digest.split_at(furniture.digest.len() / 2);
    let line = Draw::Rule { from: [LEFT_MM, 268.0], to: [edge, 268.0], colour: colour("rule"), width_mm: 0.2 };
    vec![
        Mark { leaf: None, draw: line },
        plain_text([LEFT_MM, 272.2], style.bold(), furniture.of.clone()),
        plain_text([LEFT_MM, 276.0], style.coloured("ink"), first.to_owned()),
        plain_text([LEFT_MM, 279.6], style.coloured("ink"), second.to_owned()),
        plain_text([LEFT_MM, 284.4], style, fitted(fonts, &furniture.maker, style, right - LEFT_MM - 4.0)),
        plain_text([right, 284.4], style.bold().coloured("ink"), page),
    ]
}

/// The digest as a QR code (ISO/IEC 18004), bottom right: rows of dark
/// modules as bars, on white.
fn code(digest: &str) -> Vec<Mark> {
    let Ok(code) = QrCode::encode_text(digest, QrCodeEcc::Medium) else { return Vec::new() };
    let side = code.size() + 2 * QUIET;
    let module = CODE_MM / f64::from(side);
    let corner = [LEFT_MM + WIDTH_MM - CODE_MM, PAGE_MM[1] - 7.0 - CODE_MM];
    let mut path = String::new();
    for y in 0..code.size() {
        let mut x = 0;
        while x < code.size() {
            let run = (x..code.size()).take_while(|&i| code.get_module(i, y)).count() as i32;
            if run > 0 {
                path.push_str(&format!("M{} {}h{run}v1h-{run}z", x + QUIET, y + QUIET));
            }
            x += run.max(1);
        }
    }
    let svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {side} {side}\">\
         <rect width=\"{side}\" height=\"{side}\" fill=\"#fff\"/><path d=\"{path}\" fill=\"#000\" shape-rendering=\"crispEdges\"/></svg>"
    );
    let tree = usvg::Tree::from_str(&svg, &usvg::Options::default()).ok();
    let size = [module * f64::from(side); 2];
    let draw = tree.map(|tree| Draw::Svg { at: corner, size, layers: vec![(tree, true)].into() });
    draw.into_iter().map(|draw| Mark { leaf: None, draw }).collect()
}
