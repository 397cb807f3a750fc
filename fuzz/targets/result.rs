//! Any bytes as a result: what reads it must take it or refuse it.

#![no_main]

use baywitness::record::JobRecord;
use baywitness::report::{self, TextOptions};
use baywitness::words::Language;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    if let Ok(record) = serde_json::from_slice::<JobRecord>(bytes) {
        let _ = report::text(&record, &TextOptions::default());
        let _ = report::html(&record, &[], Language::German);
    }
});
