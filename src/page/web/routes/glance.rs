//! Which markers a live picture shows: looked at at once, answered, forgotten.
//! Nothing is measured from it.

use std::sync::Arc;

use axum::Json;
use axum::body::Bytes;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};

use super::answer::json_trouble;
use super::request::{Shared, job};
use crate::job::{Glance, glance_at};
use crate::marker::Kit;
use crate::photo::{self, Kind};
use crate::web::deeds::named;
use crate::web::entry::Who;
use crate::web::entry::too_soon;
use crate::web::folders::edit;
use crate::web::language::Visitor;
use crate::web::limits;
use crate::web::page::bodies::kit_body_name;
use crate::web::trouble::{Trouble, blocking};
use crate::words::{Value, phrase};

/// Looks at one live picture.
pub(in crate::web) async fn look(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    body: Bytes,
) -> Response {
    let looked = async {
        let (folder, _) = job(&app, &name)?;
        if too_soon(&app.pace, &who) {
            return Err(Trouble::new(StatusCode::TOO_MANY_REQUESTS, "pace", phrase!("page-trouble-pace")));
        }
        let busy = |_| Trouble::new(StatusCode::SERVICE_UNAVAILABLE, "busy", phrase!("page-trouble-glances-busy"));
        let _place = Arc::clone(&app.glances).try_acquire_owned().map_err(busy)?;
        let at = Arc::clone(&app);
        let kit = blocking(move || named(&at, &folder, &edit::read(&folder)?).map(|n| n.kit).map_err(Trouble::typed));
        let kit = kit.await?;
        let looked = app.desk.glance(move || {
            let glance = glance(&body, &kit)?;
            let named = |name: &String| kit_body_name(visitor.language, &kit, name);
            let shown: Vec<String> = glance.seen.iter().map(named).collect();
            Ok((glance, shown))
        });
        looked.await
    };
    match looked.await {
        Ok((g, shown)) => {
            let [width, height] = g.size_px;
            Json(serde_json::json!({
                "width": width, "height": height, "markers": g.markers, "seen": g.seen, "shown": shown, "missing": g.missing, "ties": g.ties
            }))
            .into_response()
        }
        Err(trouble) => json_trouble(visitor, &trouble),
    }
}

/// Width and height that a JPEG states, before anything of it is decoded (ITU-T T.81, B.2.2).
fn size(jpeg: &[u8]) -> Option<(u16, u16)> {
    let two = |at: usize| Some(u16::from_be_bytes([*jpeg.get(at)?, *jpeg.get(at + 1)?]));
    let mut at = 2;
    while *jpeg.get(at)? == 0xff {
        match *jpeg.get(at + 1)? {
            0xff => at += 1,
            // A frame of any kind; C4, C8 and CC are none.
            0xc0..=0xc3 | 0xc5..=0xc7 | 0xc9..=0xcb | 0xcd..=0xcf => return Some((two(at + 7)?, two(at + 5)?)),
            0xd9 | 0xda => return None,
            _ => at += 2 + usize::from(two(at + 2)?),
        }
    }
    None
}

fn glance(bytes: &[u8], kit: &Kit) -> Result<Glance, Trouble> {
    let refused = |words: Value| Trouble::new(StatusCode::UNPROCESSABLE_ENTITY, "no-picture", words);
    if photo::recognise(bytes, "the picture").map_err(|e| refused(e.without_name().into()))? != Kind::Jpeg {
        return Err(refused(phrase!("page-trouble-live-kind").into()));
    }
    match size(bytes) {
        Some((width, height)) if u64::from(width) * u64::from(height) <= limits::GLANCE_PIXELS => {}
        _ => return Err(refused(phrase!("page-trouble-live-size").into())),
    }
    glance_at(bytes, kit).map_err(|e| refused(e.without_name().into()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_size_is_read_before_anything_is_decoded() {
        let jpeg = |w: u16, h: u16| {
            let head = [0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xff, 0xc2, 0, 11, 8];
            [&head[..], &h.to_be_bytes(), &w.to_be_bytes(), &[1]].concat()
        };
        assert_eq!(size(&jpeg(1280, 960)), Some((1280, 960)));
        assert_eq!(size(&jpeg(65_535, 65_535)), Some((65_535, 65_535)));
        for end in 0..jpeg(1, 1).len() - 1 {
            assert_eq!(size(&jpeg(1, 1)[..end]), None);
        }
        assert_eq!(size(&[0xff, 0xd8, 0xff, 0xda, 0, 2]), None);
    }
}
