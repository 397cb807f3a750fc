//! A phrase, and a phrase as text, in one line.

/// A message's key with its values: `phrase!("key", name = value, ...)`.
#[macro_export]
macro_rules! phrase {
    ($key:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::Phrase::new($key)$(.with(stringify!($name), $value))*
    };
}

/// The same as text: `say!(language, "key", name = value, ...)`.
#[macro_export]
macro_rules! say {
    ($language:expr, $key:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::phrase!($key $(, $name = $value)*).say($language)
    };
}
