//! How much anybody may send or hold. A shop's own phones stay far below.

use std::time::Duration;

/// Connections at a time; more wait.
pub(super) const CONNECTIONS: usize = 512;
/// Connections from one address at a time: who holds more does not keep others out.
pub(super) const FROM_ONE: usize = 192;
/// Streams of events at a time.
pub(super) const EVENT_STREAMS: usize = 256;
/// Bytes of a request's head.
pub(super) const HEAD_BYTES: usize = 16 * 1024;
/// A request's head must be there after this.
pub(super) const HEAD_TIME: Duration = Duration::from_secs(10);
/// Bytes of a form.
pub(super) const FORM_BYTES: usize = 64 * 1024;
/// Bytes of a photo: a phone's largest JPEG takes a third.
pub(super) const PHOTO_BYTES: u64 = 64 * 1024 * 1024;
/// Bytes of a form with photos, from a page without script.
pub(super) const FILES_FORM_BYTES: usize = 256 * 1024 * 1024;
/// Bytes of an attachment.
pub(super) const ATTACHMENT_BYTES: u64 = 32 * 1024 * 1024;
/// An upload that stands still for so long is given up; the phone sends it again.
pub(super) const STILL: Duration = Duration::from_secs(20);
/// An upload takes at most so long, however slowly it trickles.
pub(super) const UPLOAD_TIME: Duration = Duration::from_secs(600);
/// Uploads at a time; more are asked to come again.
pub(super) const UPLOADS: usize = 128;
/// Photos of a job.
pub(super) const PHOTOS: usize = 60;
/// Attachments of a job.
pub(super) const ATTACHMENTS: usize = 30;
/// Readings of a job.
pub(super) const READINGS: usize = 20;
/// Characters of a typed line.
pub(super) const LINE: usize = 120;
/// Jobs whose results are held in memory; the longest unused goes first.
pub(super) const AT_WORK: usize = 200;
/// Photos whose markers are remembered.
pub(super) const REMEMBERED_PHOTOS: usize = 600;
/// Plans that are remembered.
pub(super) const PLANS: usize = 200;
/// Phones that are paired.
pub(super) const PHONES: usize = 200;
/// Wrong pairing codes in a minute before everybody has to wait.
pub(super) const WRONG_CODES: usize = 20;
/// The latest open jobs whose cards are no other job's: the kept ids give 29 cards of three.
pub(super) const CARDS: usize = 25;
/// Jobs on one page of the list.
pub(super) const ROWS: usize = 40;
/// Bytes of a live picture, which is looked at for markers and not kept.
pub(super) const GLANCE_BYTES: usize = 1024 * 1024;
/// Pixels of a live picture.
pub(super) const GLANCE_PIXELS: u64 = 2_000_000;
/// Live pictures that are looked at or wait for it at a time; phones send the next one after the answer.
pub(super) const GLANCES: usize = 4;
/// Live pictures of one device in a second.
pub(super) const GLANCES_A_SECOND: f64 = 5.0;
/// Lines of a job's list of changes that a page shows.
pub(super) const CHANGES_SHOWN: usize = 30;
