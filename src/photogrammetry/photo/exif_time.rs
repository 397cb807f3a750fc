//! Times as EXIF writes them.

use std::str::FromStr;

use time::{Date, Month, OffsetDateTime, PrimitiveDateTime, Time, UtcOffset};

/// `2026:11:25 10:30:00` and `+01:00` (EXIF 2.32, DateTimeOriginal and
/// OffsetTimeOriginal); `Z` is read as zero.
pub(super) fn moment(time: &str, offset: &str) -> Option<OffsetDateTime> {
    Some(local_time(time)?.assume_offset(utc_offset(offset)?))
}

/// `2026:11:25 10:30:00`.
pub(super) fn local_time(text: &str) -> Option<PrimitiveDateTime> {
    let (date, time) = text.split_once([' ', 'T'])?;
    let [year, month, day] = three_numbers(date, [':', '-'])?;
    let [hour, minute, second] = three_numbers(time.trim(), [':', ':'])?;
    let small = |n: u16| u8::try_from(n).ok();
    let date = Date::from_calendar_date(i32::from(year), Month::try_from(small(month)?).ok()?, small(day)?).ok()?;
    Some(PrimitiveDateTime::new(date, Time::from_hms(small(hour)?, small(minute)?, small(second)?).ok()?))
}

fn three_numbers(text: &str, separators: [char; 2]) -> Option<[u16; 3]> {
    let mut parts = text.split(separators).map(digits);
    let numbers = [parts.next()??, parts.next()??, parts.next()??];
    parts.next().is_none().then_some(numbers)
}

/// A number of digits alone: Rust's own parser would also take a plus sign.
fn digits<T: FromStr>(text: &str) -> Option<T> {
    text.bytes().all(|b| b.is_ascii_digit()).then(|| text.parse().ok()).flatten()
}

fn utc_offset(text: &str) -> Option<UtcOffset> {
    if text == "Z" {
        return Some(UtcOffset::UTC);
    }
    let sign = match text.as_bytes().first()? {
        b'+' => 1,
        b'-' => -1,
        _ => return None,
    };
    let (hours, minutes) = text.get(1..)?.split_once(':')?;
    let (hours, minutes): (i8, i8) = (digits(hours)?, digits(minutes)?);
    ((0..=14).contains(&hours) && (0..60).contains(&minutes))
        .then(|| UtcOffset::from_hms(sign * hours, sign * minutes, 0).ok())
        .flatten()
}

#[cfg(test)]
mod tests {
    use time::macros::datetime;

    use super::*;

    #[test]
    fn a_time_needs_its_offset() {
        assert_eq!(moment("2026:11:25 10:30:00", "+01:00"), Some(datetime!(2026-11-25 10:30:00 +1)));
        assert_eq!(moment("2026:11:25 10:30:00", "-09:30"), Some(datetime!(2026-11-25 10:30:00 -9:30)));
        assert_eq!(moment("2026:11:25 10:30:00", "Z"), Some(datetime!(2026-11-25 10:30:00 UTC)));
        for (time, offset) in [
            ("2026:02:30 10:30:00", "+01:00"),
            ("2026:11:25 24:30:00", "+01:00"),
            ("0000:00:00 00:00:00", "+01:00"),
            ("    :  :     :  :  ", "+01:00"),
            ("2026:11:25 10:30:00", "+99:00"),
            ("2026:11:25 10:30:00", "+1"),
            ("2026:11:25 10:30:00", "++1:00"),
            ("2026:11:25 10:30:00", ""),
            ("2026:11:25", "+01:00"),
        ] {
            assert_eq!(moment(time, offset), None, "{time} {offset}");
        }
    }
}
