//! The page's own SVG, ready for paper: the style sheet's rules for drawings
//! with the palette's colours for light ground, in the embedded fonts.

use std::sync::Arc;

use usvg::roxmltree::Node;

use super::nodes::has_class;
use super::page::Layers;

use crate::report::html::{STYLE, light};
use crate::typeface::{FILES, Fonts, REPLACEMENT};

/// A CSS pixel, mm: 1/96 inch.
pub(super) const MM_PER_PIXEL: f64 = 25.4 / 96.0;

/// Style rules of drawings begin with one of these classes.
const DRAWN: [&str; 4] = [".bar", ".dw", ".ph", ".sym"];

/// One layer.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Part {
    Shapes,
    /// The white around words.
    Edges,
    Words,
}

impl Part {
    /// Whether a declaration about words counts in this layer.
    fn takes(self, name: &str) -> bool {
        let edge = name.starts_with("stroke") || name == "paint-order";
        match self {
            Part::Edges => name != "fill",
            Part::Shapes | Part::Words => !edge,
        }
    }

    fn ground(self) -> &'static str {
        if self == Part::Edges { "none" } else { "#000" }
    }
}

/// Reads drawings.
pub(super) struct Drawings<'a> {
    fonts: &'a Fonts,
    options: usvg::Options<'static>,
    rules: Vec<(String, Vec<(String, String)>)>,
}

impl<'a> Drawings<'a> {
    pub(super) fn new(fonts: &'a Fonts) -> Drawings<'a> {
        let mut options = usvg::Options { font_family: "Noto Sans".to_owned(), ..usvg::Options::default() };
        let known = Arc::make_mut(&mut options.fontdb);
        for file in FILES {
            known.load_font_data(file.to_vec());
        }
        Drawings { fonts, options, rules: rules(STYLE) }
    }

    /// Height over width, after the view box.
    pub(super) fn aspect(svg: Node) -> Option<f64> {
        let [_, _, width, height] = view_box(svg)?;
        (width > 0.0 && height > 0.0).then(|| height / width)
    }

    /// The drawing's layers at a width, lowest first; `colour` is the palette's colour of the verdict
    /// around it. `None` where it is no drawing.
    ///
    /// Words are set glyph by glyph: with a white edge of its own each would
    /// eat into its neighbour. So all edges are drawn first, as outlines.
    pub(super) fn layers(&self, svg: Node, source: &str, width_mm: f64, colour: &str) -> Option<Layers> {
        let text = source.get(svg.range())?.strip_prefix("<svg")?.strip_suffix("</svg>")?;
        let (attributes, inside) = text.split_once('>')?;
        let (shapes, words) = apart(inside);
        let edged: Vec<&str> = words
            .iter()
            .copied()
            .filter(|w| has_class(svg, "ph") || w.split('>').next().is_some_and(|t| t.contains("halo")))
            .collect();
        // The page lays a dark ground under a photo, for where the picture is missing.
        let ground = match view_box(svg) {
            Some([x, y, w, h]) if has_class(svg, "ph") && svg.attribute("aria-hidden").is_none() => {
                format!("<rect x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\" fill=\"#2a3135\"/>")
            }
            _ => String::new(),
        };
        let shapes = ground + &shapes;
        let mut layers = Layers::new();
        for (part, content) in [(Part::Shapes, shapes), (Part::Edges, edged.concat()), (Part::Words, words.concat())] {
            if content.is_empty() {
                continue;
            }
            let style = self.style(svg, width_mm, colour, part)?;
            let whole = format!(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\"{attributes}>\
                 <style>{style}</style>{content}</svg>"
            );
            let whole: String =
                whole.chars().map(|c| if c.is_ascii() || self.fonts.shows(c) { c } else { REPLACEMENT }).collect();
            layers.push((usvg::Tree::from_str(&whole, &self.options).ok()?, part != Part::Edges));
        }
        Some(layers)
    }

    fn style(&self, svg: Node, width_mm: f64, colour: &str, part: Part) -> Option<String> {
        let [_, _, width, _] = view_box(svg)?;
        // A photo's lines keep their width in CSS pixels whatever the photo's size; its text goes by --u.
        let units_per_pixel = width / (width_mm / MM_PER_PIXEL);
        let unit = svg.attribute("style").and_then(|s| s.split_once("--u:")?.1.split_once("px")?.0.parse::<f64>().ok());
        let unit = unit.unwrap_or(1.0) * 1.1;
        let mut css = format!("text{{font-family:\"Noto Sans\";font-size:12px;fill:{}}}", part.ground());
        for (selector, declarations) in &self.rules {
            css.push_str(&format!("{selector}{{"));
            let of_words = ["text", "halo"].iter().any(|word| selector.contains(word));
            for (name, value) in declarations.iter().filter(|(name, _)| !of_words || part.takes(name)) {
                let value = if let Some(factor) = value.strip_prefix("calc(var(--u)*") {
                    let factor = factor.trim_end_matches(')').parse::<f64>().unwrap_or(1.0);
                    format!("{:.3}px", factor * unit)
                } else if selector.starts_with(".ph") && name.starts_with("stroke-") {
                    scaled(value, units_per_pixel)
                } else {
                    coloured(value, colour)
                };
                let value = if selector == ".bar text" && name == "font-size" { "14px".to_owned() } else { value };
                let value = coloured(&value, colour);
                css.push_str(&format!("{name}:{value};"));
            }
            css.push('}');
        }
        Some(css)
    }
}

/// The content of a drawing without its words, and the words' elements.
fn apart(inside: &str) -> (String, Vec<&str>) {
    let (mut shapes, mut words, mut rest) = (String::new(), Vec::new(), inside);
    while let Some(start) = rest.find("<text") {
        let end = rest[start..].find("</text>").map_or(rest.len(), |at| start + at + "</text>".len());
        shapes.push_str(&rest[..start]);
        words.push(&rest[start..end]);
        rest = &rest[end..];
    }
    shapes.push_str(rest);
    (shapes, words)
}

fn view_box(svg: Node) -> Option<[f64; 4]> {
    let numbers: Vec<f64> = svg.attribute("viewBox")?.split_whitespace().filter_map(|n| n.parse().ok()).collect();
    numbers.try_into().ok()
}

/// `var(--name)` becomes the palette's colour; `--c` is the verdict's.
fn coloured(value: &str, verdict: &str) -> String {
    match value.strip_prefix("var(--").and_then(|v| v.strip_suffix(')')) {
        Some("c") => light(verdict).to_owned(),
        Some(name) => light(name).to_owned(),
        None => value.to_owned(),
    }
}

/// Lengths of a value times a factor: `1.8px`, `5 4`.
fn scaled(value: &str, factor: f64) -> String {
    let one = |word: &str| match word.trim_end_matches("px").parse::<f64>() {
        Ok(length) => format!("{:.3}", length * factor),
        Err(_) => word.to_owned(),
    };
    value.split_whitespace().map(one).collect::<Vec<_>>().join(" ")
}

/// The drawings' rules of the style sheet, up to its first condition.
fn rules(css: &str) -> Vec<(String, Vec<(String, String)>)> {
    let plain = css.split("\n@").next().unwrap_or_default();
    let without_comments: String = plain.split("/*").map(|part| part.split_once("*/").map_or(part, |p| p.1)).collect();
    let drawn = |selector: &str| DRAWN.iter().any(|class| selector.starts_with(class));
    let declaration = |line: &str| line.split_once(':').map(|(n, v)| (n.trim().to_owned(), v.trim().to_owned()));
    // What CSS knows and SVG in print doesn't, or what the page decides itself.
    let left_out =
        |name: &str| ["font-family", "vector-effect", "width", "--h", "font-variant-numeric"].contains(&name);
    without_comments
        .split('}')
        .filter_map(|rule| rule.split_once('{'))
        .map(|(selector, body)| (selector.trim().to_owned(), body))
        .filter(|(selector, _)| drawn(selector) && !selector.contains(','))
        .map(|(selector, body)| {
            (selector, body.split(';').filter_map(declaration).filter(|(name, _)| !left_out(name)).collect())
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rules_of_drawings_are_read_with_their_colours() {
        let all = rules(STYLE);
        let of = |selector: &str| &all.iter().find(|(s, _)| s == selector).unwrap().1;
        assert!(of(".bar .band").contains(&("fill".to_owned(), "var(--band)".to_owned())));
        assert!(of(".ph .l.mk").iter().any(|(name, _)| name == "stroke-width"));
        assert!(all.iter().all(|(s, _)| !s.contains("titleblock")));
        assert_eq!(coloured("var(--c)", "within"), light("within"));
        assert_eq!(scaled("5 4", 2.0), "10.000 8.000");
    }

    #[test]
    fn a_drawing_becomes_vectors() {
        let fonts = Fonts::new().unwrap();
        let drawings = Drawings::new(&fonts);
        let source = "<p><svg class=\"bar\" viewBox=\"0 0 40 20\"><rect class=\"band\" x=\"1\" y=\"1\" width=\"5\" \
                      height=\"5\"></rect><text x=\"3\" y=\"9\">北 ±</text></svg></p>";
        let page = usvg::roxmltree::Document::parse(source).unwrap();
        let svg = page.root_element().first_element_child().unwrap();
        assert_eq!(Drawings::aspect(svg), Some(0.5));
        let layers = drawings.layers(svg, source, 40.0, "within").unwrap();
        assert_eq!(layers.iter().map(|(tree, _)| tree.root().children().len()).collect::<Vec<_>>(), [1, 1]);
    }
}
