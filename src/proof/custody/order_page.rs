//! The page of a repair order beside its evidence folders: whether it is what their results give.

use std::path::Path;

use super::sealed_report::{Reports, other_tool};
use crate::evidence::{INDEX, MOST_MANIFEST, Manifest, ORDER_PAGE, PAYLOAD, RESULT, TAG_MANIFEST, read_small};
use crate::record::{JobRecord, Tool};
use crate::report;
use crate::words::{Language, phrase};

/// Makes the page that lies beside a repair order's index again from the results of the folders that the index lists,
/// and compares. The index alone binds its bytes: whoever signs it could write the page himself.
pub fn order_page_again(folder: &Path) -> Reports {
    let Ok(page) = read_small(&folder.join(ORDER_PAGE), MOST_MANIFEST, "small") else { return Reports::None };
    let records = match records(folder) {
        Ok(records) => records,
        Err(path) => {
            return Reports::CannotTell(phrase!(
                "evidence-cannot-read",
                path = path,
                why = phrase!("evidence-unread-result")
            ));
        }
    };
    let now = Tool::this();
    if let Some(other) = records.iter().find(|record| !record.tool.is_like(&now)) {
        return Reports::CannotTell(other_tool(&other.tool, &now));
    }
    let all: Vec<&JobRecord> = records.iter().collect();
    let series = all.iter().find_map(|record| record.context.series.clone()).unwrap_or_default();
    let mut languages = Language::ALL.into_iter().chain([Language::Pseudo]);
    if languages.any(|language| report::series_html(&series, &all, language).as_bytes() == page) {
        Reports::Same(1)
    } else {
        Reports::Other(vec![ORDER_PAGE.to_owned()])
    }
}

/// The results of the folders that the index lists; or which of them cannot be read.
fn records(folder: &Path) -> Result<Vec<JobRecord>, String> {
    let unread = || INDEX.to_owned();
    let bytes = read_small(&folder.join(INDEX), MOST_MANIFEST, "manifest").map_err(|_| unread())?;
    let text = std::str::from_utf8(&bytes).map_err(|_| unread())?;
    let index = Manifest::read(text).map_err(|_| unread())?;
    let members = index.entries.keys().filter_map(|path| path.as_str().strip_suffix(TAG_MANIFEST)?.strip_suffix('/'));
    let read = |member: &str| {
        let name = format!("{member}/{PAYLOAD}/{RESULT}");
        read_small(&folder.join(&name), MOST_MANIFEST, "small")
            .ok()
            .and_then(|json| JobRecord::from_json(&json).ok())
            .ok_or(name)
    };
    members.map(read).collect()
}
