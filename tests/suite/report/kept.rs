//! Texts that must read as they did: each beside its file in `kept/`, which
//! `BAYWITNESS_GOLDEN=rewrite` writes anew.

use std::path::Path;

/// Fails where `text` is not what `kept/NAME.txt` holds, and shows the first line that differs.
pub(super) fn assert_kept(name: &str, text: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/suite/report/kept").join(format!("{name}.txt"));
    let text = format!("{}\n", text.trim_end());
    if std::env::var("BAYWITNESS_GOLDEN").is_ok_and(|wish| wish == "rewrite") {
        std::fs::write(&path, &text).unwrap();
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    if kept == text {
        return;
    }
    let line = kept.lines().zip(text.lines()).take_while(|(a, b)| a == b).count();
    let shown = |text: &str| text.lines().nth(line).unwrap_or("(the end)").to_owned();
    panic!("{} line {}:\n  was {}\n  is  {}", path.display(), line + 1, shown(&kept), shown(&text));
}
