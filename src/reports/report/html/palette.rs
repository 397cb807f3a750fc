//! The colours, each for light and dark; the style sheet is built from them so
//! that a test can hold every pair of text and ground to its contrast.

/// A colour variable: name, on light, on dark.
type Colour = (&'static str, &'static str, &'static str);

/// Every colour of the report.
const COLOURS: [Colour; 20] = [
    ("paper", "#ffffff", "#12181b"),
    ("sheet", "#f4f6f5", "#1b2327"),
    ("ink", "#172024", "#e9eeef"),
    ("muted", "#505c61", "#aab5b9"),
    ("rule", "#c6cecd", "#3b474c"),
    ("line", "#6b777b", "#8d999e"),
    ("band", "#d3e6df", "#25483d"),
    ("band-edge", "#2b6a55", "#7cc5aa"),
    ("accent", "#0b5563", "#7fcfdd"),
    ("within", "#12603c", "#7ddaa9"),
    ("within-tint", "#e6f3ec", "#173427"),
    ("outside", "#a01f17", "#ffa69b"),
    ("outside-tint", "#fbe9e7", "#43201d"),
    ("not_proven", "#714a00", "#f2c766"),
    ("not_proven-tint", "#fbf1da", "#3b2f14"),
    ("retake", "#4b3c90", "#c0b4ff"),
    ("retake-tint", "#eeebf9", "#2b2647"),
    ("body-fill", "#e9edec", "#232d31"),
    ("photo-dark", "#10181b", "#10181b"),
    ("photo-light", "#ffffff", "#ffffff"),
];

/// A colour on light ground, `#rrggbb`; black where there is none of that name.
pub(in crate::report) fn light(name: &str) -> &'static str {
    COLOURS.iter().find(|colour| colour.0 == name).map_or("#000000", |colour| colour.1)
}

/// The variables as CSS; dark only on a screen, so that print is always light.
pub fn css() -> String {
    let list = |pick: fn(&Colour) -> &str| -> String {
        COLOURS.iter().map(|colour| format!("--{}:{};", colour.0, pick(colour))).collect()
    };
    format!(
        ":root{{{}}}\n@media screen and (prefers-color-scheme:dark){{:root{{{}}}}}",
        list(|colour| colour.1),
        list(|colour| colour.2)
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn channel(hex: &str) -> f64 {
        let c = f64::from(u8::from_str_radix(hex, 16).unwrap()) / 255.0;
        if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
    }

    /// Relative luminance, WCAG 2.2.
    fn luminance(hex: &str) -> f64 {
        0.2126 * channel(&hex[1..3]) + 0.7152 * channel(&hex[3..5]) + 0.0722 * channel(&hex[5..7])
    }

    /// Contrast ratio, WCAG 2.2.
    fn contrast(a: &str, b: &str) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    fn both(name: &str) -> [&'static str; 2] {
        let colour = COLOURS.iter().find(|c| c.0 == name).unwrap();
        [colour.1, colour.2]
    }

    #[test]
    fn the_formula_gives_the_ratios_known_from_its_definition() {
        // Black on white is 21:1 by definition.
        assert!((contrast("#000000", "#ffffff") - 21.0).abs() < 1e-9);
        assert!((contrast("#767676", "#ffffff") - 4.54).abs() < 0.005);
    }

    #[test]
    fn text_reaches_wcag_aa_on_every_ground() {
        let text = ["ink", "muted", "accent", "within", "outside", "not_proven", "retake"];
        for ground in ["paper", "sheet"] {
            for word in text {
                for (a, b) in both(word).into_iter().zip(both(ground)) {
                    assert!(contrast(a, b) >= 4.5, "{word} on {ground}: {:.2}", contrast(a, b));
                }
            }
        }
        for word in ["within", "outside", "not_proven", "retake"] {
            for (a, b) in both(word).into_iter().zip(both(&format!("{word}-tint"))) {
                assert!(contrast(a, b) >= 4.5, "{word} on its tint: {:.2}", contrast(a, b));
            }
        }
        for (a, b) in both("ink").into_iter().zip(both("body-fill")) {
            assert!(contrast(a, b) >= 4.5);
        }
    }

    #[test]
    fn drawn_lines_reach_three_to_one() {
        // WCAG 1.4.11: graphics that are needed to understand the content.
        for (line, ground) in [("line", "paper"), ("band-edge", "paper"), ("band-edge", "band"), ("ink", "band")] {
            for (a, b) in both(line).into_iter().zip(both(ground)) {
                assert!(contrast(a, b) >= 3.0, "{line} on {ground}: {:.2}", contrast(a, b));
            }
        }
    }
}
