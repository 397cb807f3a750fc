//! Evidence folders beside the Library of Congress's bagit (PyPI). It does not
//! read a percent sign in a name as RFC 8493 (2.1.3) wants it written (`%25`),
//! so none stands here; `manifest.rs` tests that one.

use std::collections::BTreeMap;

use baywitness::evidence::{Bytes, Contents, seal};
use serde_json::json;

use super::harness::answer;

#[test]
fn the_library_of_congress_s_bagit_validates_a_folder() {
    let dir = tempfile::tempdir().unwrap();
    let names = ["result.json", "job/photos/5 ä.jpg", "job/a b.txt"];
    let payload: BTreeMap<_, _> =
        names.into_iter().map(|n| (n.to_owned(), Bytes::Here(n.as_bytes().to_vec()))).collect();
    let out = dir.path().join("bag");
    let info = vec![("External-Identifier".to_owned(), "invented".to_owned())];
    seal(&out, &Contents { payload, info }, None, None).unwrap();
    let validate = || answer("bags.py", &["bagit"], &json!({ "folder": out }));
    let Some(good) = validate() else { return };
    assert_eq!(good["valid"], json!(true), "{good}");
    assert_eq!(good["files"], json!(3));
    std::fs::write(out.join("data/result.json"), "changed").unwrap();
    assert_eq!(validate().unwrap()["valid"], json!(false));
}
