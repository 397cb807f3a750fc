//! Attacks on signed reports, by whoever has a certificate that does not count, sets his clock, or signs behind somebody else.

use std::path::Path;

use super::issuer::{BENCH, GOOD, KEY, REPORT, ago, claiming, failed, passed, written};
use crate::evidence::doors::run;
use crate::evidence::stamps::openssl;

/// Former staff sign with a certificate whose time is over, or with one that was issued for something else.
#[test]
fn a_report_signed_with_a_certificate_that_did_not_count() {
    let (issuer, now) = (&BENCH.listed, written(ago(0)));
    let now = now.as_str();
    issuer.issue("ended", ["20150101000000Z", "20180101000000Z"], "signs");
    issuer.issue("begins", ["20390101000000Z", "20400101000000Z"], "signs");
    issuer.issue("wraps", GOOD, "wraps");
    for (name, when, words) in [
        ("signs", now, None),
        ("ended", "20170101000000Z", None),
        ("ended", now, Some("had ended when it was signed")),
        ("begins", now, Some("had not begun when it was signed")),
        ("wraps", now, Some("is not for signatures")),
    ] {
        let pdf = issuer.signed(&claiming(when), name);
        let (code, said) = BENCH.check_pdf(&format!("{name}-{when}"), &pdf, &issuer.at(&format!("{name}.pem")));
        assert_eq!(code, if words.is_some() { 3 } else { 0 }, "{name}: {said}");
        assert!(words.is_none_or(|words| said.contains(words)), "{name}: {said}");
    }
    // Where an authority that counts says when, the signer's own clock does not.
    for (when, code) in [("20170601000000Z", 0), (now, 3)] {
        let pdf = BENCH.stamped_pdf(&issuer.signed(&claiming("20170101000000Z"), "ended"), when);
        let (said_code, said) = BENCH.check_pdf(&format!("stamped-{when}"), &pdf, &issuer.at("ended.pem"));
        assert!(said_code == code && passed(&said) == 1, "{said_code}: {said}");
    }
}

/// The signer's own clock was set ahead.
#[test]
fn a_signers_clock_that_was_wrong() {
    let certificate = BENCH.listed.at("signs.pem");
    let check = |name: &str, pdf: &[u8]| BENCH.check_pdf(name, pdf, &certificate);
    let [now, tomorrow] = [0, -1].map(|days| BENCH.listed.signed(&claiming(&written(ago(days))), "signs"));
    let (code, said) = check("clock-right", &BENCH.stamped_pdf(&now, &written(ago(0))));
    assert!(code == 0 && !said.contains("signing time"), "{code}: {said}");
    for (name, pdf, words) in [
        ("clock-ahead", tomorrow, "ahead of this machine's clock: one of the two is wrong"),
        ("clock-late", BENCH.stamped_pdf(&now, "20200101000000Z"), "was stamped before that: that clock was wrong"),
    ] {
        let (code, said) = check(name, &pdf);
        let told = said.lines().any(|line| line.starts_with("not checkable   signing time") && line.contains(words));
        assert!(code == 0 && told, "{name}: {code}: {said}");
    }
}

/// The workshop's signed report is changed, and somebody else's signature put behind it, which holds over all of it.
#[test]
fn a_signature_of_somebody_else_behind_a_broken_one() {
    let (good, certificate) = (&REPORT.0, BENCH.listed.at("signs.pem"));
    let mut changed = good.clone();
    changed[good.len() / 3] ^= 1;
    let with_another = |first: &[u8]| {
        let room = "0".repeat(16_000);
        let head = format!("9000 0 obj\n<</Type/Sig/M(D:{}Z)/ByteRange[0 ", &written(ago(0))[..14]);
        let from = first.len() + head.len() + 32 + "]/Contents".len();
        let (to, tail) = (from + room.len() + 2, ">>\nendobj\n%%EOF\n");
        let numbers = format!("{from:<10} {to:<10} {:<10}", tail.len());
        let end = format!("{head}{numbers}]/Contents<{room}>{tail}");
        BENCH.listed.signed(&[first, end.as_bytes()].concat(), "signs")
    };
    let (code, said) = BENCH.check_pdf("second", &with_another(good), &certificate);
    let told = format!("an earlier one, by CN=Invented-workshop, over the file's first {} bytes", good.len());
    assert!(code == 0 && said.contains(&told) && said.contains("by CN=signs, over the whole file"), "{code}: {said}");
    let (code, said) = BENCH.check_pdf("second-broken", &with_another(&changed), &certificate);
    let told = "an earlier signature, by CN=Invented-workshop, does not hold";
    assert!(code == 1 && failed(&said, told) && said.contains("the last one is by CN=signs"), "{code}: {said}");
}

/// Anybody writes what he likes into a certificate of his own.
#[test]
fn a_certificate_whose_name_turns_the_writing() {
    let dir = &BENCH.listed.dir;
    assert!(openssl(dir, &format!("{KEY} turned.key")));
    let line = "req -new -x509 -utf8 -key turned.key -subj /CN=\u{202e}dellahs -days 30 -config conf -extensions stamps \
                -out turned.pem";
    assert!(openssl(dir, line));
    let (code, said) = run(&[&BENCH.stamped("sealed", "turned", &[("turned", &written(ago(0)))])], &["check"], None);
    assert!(code == 3 && said.contains("CN=\\u{202e}dellahs") && !said.contains('\u{202e}'), "{code}: {said}");
    let pdf = BENCH.listed.signed(&claiming(&written(ago(0))), "turned");
    let (code, said) = BENCH.check_pdf("turned", &pdf, &BENCH.listed.at("turned.pem"));
    assert!(code == 0 && said.contains("CN=\\u{202e}dellahs") && !said.contains('\u{202e}'), "{code}: {said}");
    let named = [Path::new("\u{202e}dellahs"), Path::new("--out"), &BENCH.shop.at("turned-own.pem")];
    assert_eq!(run(&named, &["certificate"], None).0, 2);
}
