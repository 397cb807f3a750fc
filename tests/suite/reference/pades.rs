//! A signed report beside pyHanko (is it PAdES, valid and of the whole file?) and
//! pikepdf (is it the PDF/A-2a and PDF/UA-1 that it was?).

use serde_json::json;

use super::harness::answer;
use crate::evidence::doors::{run, small_job};
use crate::evidence::pades::{own, report};
use crate::evidence::stamps::Authority;

#[test]
fn a_signed_report_is_pades_and_stays_an_archives_pdf() {
    let dir = tempfile::tempdir().unwrap();
    let job = small_job(&dir.path().join("in"));
    let key = own(dir.path(), "Invented");
    let file = report(&job, &dir.path().join("report"), &[&key]);
    let authority = Authority::new(&dir.path().join("authority"), "-algorithm RSA -pkeyopt rsa_keygen_bits:2048", 0);
    let ask = |tsa: Option<std::path::PathBuf>| {
        let input = json!({ "pdf": file, "root": key.with_extension("crt"), "tsa": tsa });
        answer("pades.py", &["pyhanko", "pikepdf"], &input)
    };
    let Some(found) = ask(None) else { return };
    assert_eq!(found["stamp"], json!(null));
    let (request, response) = (dir.path().join("ask.tsq"), dir.path().join("answer.tsr"));
    assert_eq!(run(&[&file, "--request".as_ref(), &request], &["stamp"], None).0, 0);
    authority.answer(&request, &response, "");
    assert_eq!(run(&[&file, "--answer".as_ref(), &response], &["stamp"], None).0, 0);
    let stamped = ask(Some(authority.root())).unwrap();
    assert_eq!(stamped["stamp"], json!({ "intact": true, "valid": true, "trusted": true }), "{stamped}");
    for found in [&found, &stamped] {
        for yes in ["intact", "valid", "trusted", "bottom_line", "docmdp_ok", "marked", "on_first_page"] {
            assert_eq!(found[yes], json!(true), "{yes}: {found}");
        }
        assert_eq!((&found["coverage"], &found["signatures"]), (&json!("ENTIRE_FILE"), &json!(1)), "{found}");
        // EN 319 142-1, 6.3: no signing time among them, it stands in the PDF.
        let attributes = json!(["content_type", "message_digest", "signing_certificate_v2"]);
        assert_eq!((&found["signed_attributes"], &found["permission"]), (&attributes, &json!(1)), "{found}");
        assert_eq!(found["subfilter"], json!("/ETSI.CAdES.detached"));
        assert_eq!((&found["pdfa"], &found["scripts"]), (&json!(["2", "A", "1"]), &json!(false)), "{found}");
        // ISO 19005-2, 6.3: to be printed, never hidden; an empty rectangle needs no appearance.
        assert_eq!((&found["flags"], &found["rectangle"]), (&json!(132), &json!([-1.0, -1.0, -1.0, -1.0])));
        assert_eq!(found["field"], json!("Signature of this report"));
    }
}
