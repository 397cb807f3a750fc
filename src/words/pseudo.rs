//! A language that nobody speaks: English with accents, a third longer and in
//! brackets. Plain letters on a page are then texts outside the message files,
//! a missing bracket is a text that was cut.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::{parser, serializer};

/// A message file's text in that language; what can't be parsed stays.
pub(crate) fn of(text: &str) -> String {
    let Ok(mut resource) = parser::parse(text.to_owned()) else { return text.to_owned() };
    for entry in &mut resource.body {
        let (value, attributes) = match entry {
            Entry::Message(message) => (message.value.as_mut(), &mut message.attributes),
            Entry::Term(term) => (Some(&mut term.value), &mut term.attributes),
            _ => continue,
        };
        value.into_iter().chain(attributes.iter_mut().map(|a| &mut a.value)).for_each(bracket);
    }
    serializer::serialize(&resource)
}

fn bracket(pattern: &mut Pattern<String>) {
    let letters = accent(pattern);
    let more = "~".repeat(letters.div_ceil(3));
    let text = |value: &str| PatternElement::TextElement { value: value.to_owned() };
    pattern.elements.insert(0, text("⟦"));
    pattern.elements.push(text(&format!("{more}⟧")));
}

/// Accents all letters; how many there are.
fn accent(pattern: &mut Pattern<String>) -> usize {
    let mut letters = 0;
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => {
                letters += value.chars().filter(|c| c.is_alphabetic()).count();
                *value = value.chars().map(accented).collect();
            }
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                letters += variants.iter_mut().map(|v| accent(&mut v.value)).max().unwrap_or(0);
            }
            PatternElement::Placeable { expression: Expression::Inline(InlineExpression::Placeable { .. }) }
            | PatternElement::Placeable { .. } => {}
        }
    }
    letters
}

fn accented(c: char) -> char {
    const PLAIN: &str = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    const ACCENTED: &str = "àƀçđéƒğĥíĵķłɱñóþǫŕşťúṽŵẋýžÀƁÇĐÉƑĞĤÍĴĶŁṀÑÓÞǪŔŞŤÚṼŴẊÝŽ";
    PLAIN.chars().zip(ACCENTED.chars()).find(|(plain, _)| *plain == c).map_or(c, |(_, accented)| accented)
}
