//! The catalogue: every string of the page, in every language side by side, so
//! that one which lacks a translation does not compile. `{0}` and `{1}` are
//! filled in. Messages of the measuring rooms come as they are, in English.

macro_rules! catalogue {
    ($($name:ident: $english:literal, $german:literal;)*) => {
        /// The strings of one language.
        pub(super) struct Words { $(pub(super) $name: &'static str,)* }
        /// English.
        pub(super) static ENGLISH: Words = Words { $($name: $english,)* };
        /// German.
        pub(super) static GERMAN: Words = Words { $($name: $german,)* };
        /// Names and both texts, for tests.
        #[cfg(test)]
        const ALL: &[(&str, &str, &str)] = &[$((stringify!($name), $english, $german),)*];
    };
}

/// A text with its places filled in.
pub(super) fn fill(text: &str, values: &[&str]) -> String {
    let mut filled = text.to_owned();
    for (i, value) in values.iter().enumerate() {
        filled = filled.replace(&format!("{{{i}}}"), value);
    }
    filled
}

catalogue! {
    language: "en", "de";
    other_language: "de", "en";
    other_language_name: "Deutsch", "English";
    program: "baywitness", "baywitness";
    skip: "Skip to the content", "Zum Inhalt";
    all_jobs: "All jobs", "Alle Aufträge";

    jobs_title: "Jobs", "Aufträge";
    begin_job: "New job", "Neuer Auftrag";
    search_jobs: "Search by number, vehicle, VIN, technician or sheet", "Suche nach Nummer, Fahrzeug, FIN, Techniker oder Vorgabeblatt";
    search: "Search", "Suchen";
    found_jobs: "{0} jobs", "{0} Aufträge";
    no_jobs: "No job here yet.", "Noch kein Auftrag hier.";
    no_match: "No job has all of these words.", "Kein Auftrag enthält alle diese Wörter.";
    earlier: "Earlier jobs", "Frühere Aufträge";
    later: "Later jobs", "Spätere Aufträge";
    open_state: "open", "offen";
    closed_state: "closed and sealed", "abgeschlossen und versiegelt";
    unreadable_job: "This job's file can't be read", "Die Datei dieses Auftrags ist nicht lesbar";
    attempt_n: "attempt {0}", "Versuch {0}";
    not_measured: "not measured yet", "noch nicht gemessen";

    choose_sheet: "Which set-up sheet?", "Welches Vorgabeblatt?";
    search_sheets: "Part of the sheet's name", "Teil des Namens";
    used_lately: "Used lately", "Zuletzt benutzt";
    every_sheet: "All sheets", "Alle Vorgabeblätter";
    no_sheet: "No set-up sheet has all of these words.", "Kein Vorgabeblatt enthält alle diese Wörter.";
    new_sheet: "Type a new set-up sheet", "Neues Vorgabeblatt eingeben";
    new_sheet_why: "Every figure is typed twice, each time from the source: a wrong one would make a wrong set-up right. Leave a quantity empty that the source does not ask for.", "Jede Zahl wird zweimal eingegeben, jedes Mal aus der Quelle: eine falsche machte eine falsche Aufstellung richtig. Was die Quelle nicht verlangt, bleibt leer.";
    sheet_name: "Short name", "Kurzname";
    sheet_name_hint: "Small letters, digits and hyphens.", "Kleinbuchstaben, Ziffern und Bindestriche.";
    sheet_title: "What is calibrated with what", "Was wird womit kalibriert";
    sheet_source: "Source", "Quelle";
    sheet_source_hint: "Whose figures these are: the maker's document and its date. Shown on every report.", "Wessen Zahlen das sind: Unterlage des Herstellers mit Datum. Steht auf jedem Bericht.";
    reference_line: "Reference line", "Bezugslinie";
    choose: "choose", "wählen";
    line_thrust: "thrust line", "Fahrachse";
    line_centre: "centreline", "Mittellinie";
    line_rear_axle: "normal to the rear axle", "Senkrechte zur Hinterachse";
    distance_from: "From", "Ab";
    wanted_value: "Required", "Soll";
    tolerance_value: "Tolerance, plus and minus", "Toleranz, plus und minus";
    once_more: "once more", "noch einmal";
    keep_sheet: "Save sheet", "Vorgabeblatt speichern";
    checks_n: "{0} checks", "{0} Prüfungen";
    source_says: "Source:", "Quelle:";

    new_job: "New job", "Neuer Auftrag";
    other_sheet: "Another sheet", "Anderes Vorgabeblatt";
    vehicle: "Vehicle", "Fahrzeug";
    vehicle_description: "Vehicle in words", "Fahrzeug in Worten";
    vin: "VIN (17 characters)", "FIN (17 Zeichen)";
    vin_ok: "The VIN's check digit agrees.", "Die Prüfziffer der FIN stimmt.";
    vin_doubt: "The ninth character is not the check digit that North American numbers bear. Compare the number with the vehicle once more; other markets need none.", "Das neunte Zeichen ist nicht die Prüfziffer, die nordamerikanische Nummern tragen. Nummer noch einmal mit dem Fahrzeug vergleichen; andere Märkte brauchen keine.";
    repair_order: "Repair order", "Werkstattauftrag";
    kit: "Marker kit", "Markersatz";
    camera: "Camera", "Kamera";
    camera_by_photo: "as each photo's own record says", "wie es in jedem Foto selbst steht";
    no_kit: "No marker kit bears what this sheet checks. Put the kit's file where the program looks for it.", "Kein Markersatz trägt, was dieses Blatt prüft. Datei des Markersatzes an die Stelle legen, an der das Programm sucht.";
    technician: "Technician", "Techniker";
    bay: "Bay", "Kalibrierplatz";
    optional: "optional", "optional";
    start_job: "Start this job", "Diesen Auftrag starten";

    step_prepare: "Prepare", "Vorbereiten";
    step_photos: "Photos", "Fotos";
    step_finish: "Finish", "Abschluss";
    steps_of_job: "Steps of this job", "Schritte dieses Auftrags";
    attempts: "Attempts", "Versuche";
    this_attempt: "this one", "dieser";

    before_photos: "Before the photos", "Vor den Fotos";
    answered: "{0} of {1} answered", "{0} von {1} beantwortet";
    yes: "Yes", "Ja";
    no: "No", "Nein";
    unanswered: "Not answered", "Nicht beantwortet";
    required: "required", "Pflicht";
    sizes: "Vehicle sizes", "Fahrzeugmaße";
    sizes_why: "Used only where the photos do not show it.", "Nur benutzt, wo die Fotos es nicht zeigen.";
    wheelbase: "Wheelbase, mm", "Radstand, mm";
    nose_from_rear_axle: "Nose in front of the rear axle, mm", "Fahrzeugfront vor der Hinterachse, mm";
    floor_below_hub: "Wheel centre above the floor, mm", "Radmitte über dem Boden, mm";
    readings: "Readings", "Messwerte";
    readings_why: "Laser, tape, level: compared with the photos, never mixed in.", "Laser, Maßband, Wasserwaage: mit den Fotos verglichen, nie eingemischt.";
    instrument: "Instrument", "Messgerät";
    laser: "laser", "Laser";
    tape: "tape", "Maßband";
    level: "spirit level", "Wasserwaage";
    alignment: "alignment rack", "Achsmessanlage";
    alignment_sheet: "Alignment printout", "Achsmessprotokoll";
    alignment_sheet_why: "The thrust angle, or both rear toes that give it: degrees and minutes without a sign, and the side.", "Der Fahrachswinkel, oder die Spur beider Hinterräder: Grad und Minuten ohne Vorzeichen, und die Seite.";
    thrust_angle: "Thrust angle", "Fahrachswinkel";
    rear_toe_left: "Rear toe, left wheel", "Spur hinten links";
    rear_toe_right: "Rear toe, right wheel", "Spur hinten rechts";
    points_left: "points left", "zeigt nach links";
    points_right: "points right", "zeigt nach rechts";
    toe_in: "toe-in", "Vorspur";
    toe_out: "toe-out", "Nachspur";
    choose_side: "side?", "Seite?";
    degrees: "degrees", "Grad";
    minutes: "minutes", "Minuten";
    save: "Save", "Speichern";
    saved: "Saved.", "Gespeichert.";
    to_photos: "On to the photos", "Weiter zu den Fotos";

    q_distance: "distance", "Abstand";
    q_squareness: "squareness", "Rechtwinkligkeit";
    q_centring: "centring", "Mittigkeit";
    q_height: "height", "Höhe";
    q_tilt: "tilt", "Neigung";
    q_level: "level", "Querneigung";
    q_from: "{0} from the {1}", "{0} ab {1}";
    from_nose: "nose", "Fahrzeugfront";
    from_front_axle: "front axle", "Vorderachse";
    from_rear_axle: "rear axle", "Hinterachse";

    side_left_end: "left end nearer", "linkes Ende näher";
    side_right_end: "right end nearer", "rechtes Ende näher";
    side_top_away: "top away", "oben weg";
    side_top_towards: "top towards", "oben hin";
    side_left_low: "left end low", "linkes Ende tief";
    side_right_low: "right end low", "rechtes Ende tief";
    side_above: "above", "darüber";
    side_below: "below", "darunter";
    wanted: "required {0}", "Soll {0}";

    card_title: "One-time card", "Einmalkarte";
    card_why: "A code that only this job has, seen in the photos, proves that they were taken for it. Show it on a second screen beside the stand, or lay it out from tiles with these numbers.", "Ein Code, den nur dieser Auftrag hat und der auf den Fotos zu sehen ist, beweist, dass sie für ihn aufgenommen wurden. Auf einem zweiten Bildschirm neben dem Gestell zeigen oder aus Kacheln mit diesen Nummern legen.";
    card_make: "Use a card", "Karte benutzen";
    card_show: "Show the card", "Karte zeigen";
    card_code: "This job's code: {0}", "Code dieses Auftrags: {0}";
    card_marker: "Marker {0}", "Marker {0}";
    back_to_photos: "Back to the photos", "Zurück zu den Fotos";

    where_to_stand: "Where to stand", "Aufnahmeorte";
    place_ahead: "{0} m in front of the nose", "{0} m vor der Fahrzeugfront";
    place_behind: "{0} m behind the nose", "{0} m hinter der Fahrzeugfront";
    place_left: "{0} m to the vehicle's left", "{0} m zur linken Fahrzeugseite";
    place_right: "{0} m to the vehicle's right", "{0} m zur rechten Fahrzeugseite";
    place_middle: "on the middle line", "auf der Mittellinie";
    place_high: "phone {0} m high", "Telefon {0} m hoch";
    place_sees: "In the picture: {0}", "Im Bild: {0}";
    no_place: "No place in this bay shows enough markers.", "Kein Platz auf diesem Kalibrierplatz zeigt genug Marker.";
    drawing_from_above: "The bay from above; the vehicle drives upwards.", "Der Kalibrierplatz von oben; das Fahrzeug fährt nach oben.";
    in_every_step: "From each place in every position: {0}.", "Von jedem Platz in jeder Stellung: {0}.";
    position: "Position of the stand", "Stellung des Gestells";
    plan_failed: "Where to stand can't be said for this kit.", "Für diesen Markersatz lässt sich nicht sagen, wo Sie stehen.";

    take_photo: "Take a photo", "Foto aufnehmen";
    live_photo: "Photo in this page", "Foto in dieser Seite";
    live_take: "Take it", "Auslösen";
    live_close: "Close the camera", "Kamera schließen";
    live_wait: "Looking for markers …", "Marker werden gesucht …";
    live_seen: "{0} markers: {1}", "{0} Marker: {1}";
    live_none: "No marker of this kit in the picture.", "Kein Marker dieses Satzes im Bild.";
    live_ties: "Stand and surroundings are both in the picture.", "Gestell und Umgebung sind beide im Bild.";
    live_apart: "Stand and something else must both be in the picture.", "Gestell und noch etwas müssen beide im Bild sein.";
    live_away: "The server does not answer: photos are kept here until it does.", "Der Server antwortet nicht: Fotos bleiben hier, bis er es tut.";
    live_level: "turned {0}°, looks {1}° down", "gedreht {0}°, blickt {1}° nach unten";
    live_refused: "This browser gives no camera ({0}). Use the other button.", "Dieser Browser gibt keine Kamera her ({0}). Den anderen Knopf benutzen.";
    live_taken: "Taken: {0} × {1} pixels.", "Aufgenommen: {0} × {1} Pixel.";
    live_frame: "It is a frame of the live picture: smaller than the phone's own photos and cut otherwise, so that a camera file made from photos does not fit it.", "Es ist ein Einzelbild des laufenden Bildes: kleiner als Fotos des Telefons und anders beschnitten, so dass eine Kameradatei aus Fotos nicht dazu passt.";
    live_no_record: "It says nothing of the phone that took it (no EXIF): it is measured only where the job names its camera, and only one fitted from pictures taken this way fits.", "Es sagt nichts über das Telefon (kein EXIF): gemessen wird es nur, wo der Auftrag seine Kamera nennt, und nur eine, die aus so aufgenommenen Bildern bestimmt ist, passt.";
    live_unnamed: "This job names no camera: better use the phone's own camera with the other button.", "Dieser Auftrag nennt keine Kamera: besser die Kamera des Telefons mit dem anderen Knopf benutzen.";
    choose_photos: "Choose photos", "Fotos wählen";
    drop_here: "or drop them here", "oder hier ablegen";
    needs_script: "Sending photos needs JavaScript in this browser. The photos can also be copied into the job's folder photos/.", "Zum Senden von Fotos braucht dieser Browser JavaScript. Die Fotos können auch in den Ordner photos/ des Auftrags kopiert werden.";
    waiting_here: "On this device, not sent yet", "Auf diesem Gerät, noch nicht gesendet";
    photos: "Photos", "Fotos";
    no_photos: "No photo yet. Two from different sides are the least.", "Noch kein Foto. Zwei von verschiedenen Seiten sind das Mindeste.";
    photo_n: "Photo {0}", "Foto {0}";
    good_photo: "Good", "Gut";
    retake_photo: "Take it again", "Noch einmal aufnehmen";
    looking: "Being looked at …", "Wird angesehen …";
    seen_markers: "{0} markers found", "{0} Marker gefunden";
    missing_markers: "{0} not found where they should be: {1}", "{0} nicht gefunden, wo sie sein sollten: {1}";
    covered: "Covered, glare from a lamp, or in the dark?", "Verdeckt, von einer Lampe geblendet oder im Dunkeln?";
    shows: "Shows", "Zeigt";
    no_target: "The stand is not in this photo, or nothing else is: both must be in one picture.", "Das Gestell ist nicht auf diesem Foto, oder nichts außer ihm: beides muss auf ein Bild.";
    set_aside: "Leave this photo out", "Dieses Foto weglassen";
    bring_back: "Use it again", "Wieder mitmessen";
    aside_photos: "Left out, not measured with", "Weggelassen, nicht mitgemessen";
    after_photo_tag: "after the calibration", "nach der Kalibrierung";
    seen_key: "found", "gefunden";
    missing_key: "not found", "nicht gefunden";

    measuring: "Measuring …", "Wird gemessen …";
    verdict_within: "Within tolerance", "Innerhalb der Toleranz";
    all_within: "All checks within tolerance", "Alle Prüfungen innerhalb der Toleranz";
    verdict_outside: "Outside tolerance", "Außerhalb der Toleranz";
    verdict_not_proven: "Not proven", "Nicht nachgewiesen";
    verdict_retake: "Retake", "Neu aufnehmen";
    verdict_failed: "Can't be measured", "Nicht messbar";
    lead_within: "Every check is proven. Run the calibration, then take one more photo.", "Jede Prüfung ist nachgewiesen. Kalibrierung starten, danach noch ein Foto aufnehmen.";
    lead_outside: "Move the stand as shown, then take one photo.", "Gestell wie gezeigt bewegen, dann ein Foto aufnehmen.";
    lead_held: "Do not move the stand yet: settle first what is named below, then begin the next attempt.", "Gestell noch nicht bewegen: erst klären, was unten steht, dann nächsten Versuch beginnen.";
    not_trusted: "not to be trusted", "nicht verlässlich";
    lead_not_proven: "Nothing is proven to be wrong, but not everything is proven to be right.", "Nichts ist nachweislich falsch, aber nicht alles nachweislich richtig.";
    lead_retake: "The photos can't decide. What to do stands below.", "Die Fotos können nicht entscheiden. Was zu tun ist, steht unten.";
    second_photo: "One more photo from the other side.", "Noch ein Foto von der anderen Seite.";
    what_moves: "What moves where", "Was wohin";
    not_to_scale: "Not to scale. Dashed: where it must be.", "Nicht maßstäblich. Gestrichelt: wo es sein muss.";
    from_above: "From above", "Von oben";
    from_side: "From the vehicle's right side", "Von der rechten Fahrzeugseite";
    from_vehicle: "Seen from the vehicle", "Vom Fahrzeug aus";
    turn_left_end: "Turn: the end on the vehicle's left towards the vehicle, {0}°", "Drehen: das linke Ende zum Fahrzeug hin, {0}°";
    turn_right_end: "Turn: the end on the vehicle's right towards the vehicle, {0}°", "Drehen: das rechte Ende zum Fahrzeug hin, {0}°";
    move_left: "{0} mm to the vehicle's left", "{0} mm zur linken Fahrzeugseite";
    move_right: "{0} mm to the vehicle's right", "{0} mm zur rechten Fahrzeugseite";
    move_away: "{0} mm away from the vehicle", "{0} mm vom Fahrzeug weg";
    move_towards: "{0} mm towards the vehicle", "{0} mm zum Fahrzeug hin";
    move_up: "{0} mm higher", "{0} mm höher";
    move_down: "{0} mm lower", "{0} mm tiefer";
    tilt_away: "Tilt: the top away from the vehicle, {0}°", "Neigen: oben vom Fahrzeug weg, {0}°";
    tilt_towards: "Tilt: the top towards the vehicle, {0}°", "Neigen: oben zum Fahrzeug hin, {0}°";
    level_right_down: "Level: the end on the vehicle's right lower, {0}°", "Ausrichten: das rechte Ende tiefer, {0}°";
    level_left_down: "Level: the end on the vehicle's left lower, {0}°", "Ausrichten: das linke Ende tiefer, {0}°";
    vehicle_word: "vehicle", "Fahrzeug";
    left_word: "left", "links";
    right_word: "right", "rechts";
    found_out: "What was found", "Was gefunden wurde";
    checks: "Checks", "Prüfungen";
    full_report: "Full report", "Ganzer Bericht";
    first_thing: "First", "Zuerst";
    prove_it: "Leave the stand. One more photo from another place.", "Gestell stehen lassen. Noch ein Foto von anderer Stelle.";
    moved_it: "Moved it: one photo", "Bewegt: ein Foto";
    moved_why: "Only the stand was moved. Show it with plates and floor sheets.", "Nur das Gestell wurde bewegt. Mit Radplatten und Bodenblättern aufnehmen.";
    next_attempt: "Stand moved: next attempt", "Gestell bewegt: nächster Versuch";
    beside_title: "Against earlier attempts", "Gegenüber früheren Versuchen";
    stood_alike: "nothing has moved since", "seither hat sich nichts bewegt";
    stood_apart: "cannot be measured together", "nicht gemeinsam messbar";
    measure_together: "Measure with those photos too", "Mit jenen Fotos zusammen messen";
    measure_together_why: "They are copied into this attempt: more photos of the same stand prove more.", "Sie werden in diesen Versuch kopiert: mehr Fotos desselben Gestells weisen mehr nach.";
    next_attempt_why: "This attempt is sealed as it is and stays listed.", "Dieser Versuch wird so versiegelt und bleibt gelistet.";
    to_finish: "On to the calibration", "Weiter zur Kalibrierung";

    calibration: "Calibration", "Kalibrierung";
    calibration_result: "What the scan tool said", "Was das Diagnosegerät sagt";
    result_none: "nothing yet", "noch nichts";
    result_successful: "successful", "erfolgreich";
    result_failed: "failed", "fehlgeschlagen";
    result_not_run: "not run", "nicht durchgeführt";
    reported_azimuth: "Reported misalignment sideways, degrees", "Gemeldete Fehlstellung seitlich, Grad";
    reported_elevation: "Reported misalignment up and down, degrees", "Gemeldete Fehlstellung in der Höhe, Grad";
    large_misalignment: "The control unit reports {0}°. With the set-up proven that large a figure points at the sensor's bracket or its mounting; with the set-up not proven, check the set-up first.", "Das Steuergerät meldet {0}°. Bei nachgewiesener Aufstellung deutet ein so großer Wert auf Halter oder Einbau des Sensors; ist sie nicht nachgewiesen, zuerst die Aufstellung prüfen.";
    take_off: "Before the calibration runs, take off what would disturb it: {0}. {1} stay where they are.", "Vor der Kalibrierung abnehmen, was sie stören würde: {0}. {1} bleiben, wo sie sind.";
    take_off_only: "Before the calibration runs, take off what would disturb it: {0}.", "Vor der Kalibrierung abnehmen, was sie stören würde: {0}.";
    the_stand: "The stand", "Das Gestell";
    stand_and_sheets: "The stand and the floor sheets", "Gestell und Bodenblätter";
    after_photo: "Photo after the calibration", "Foto nach der Kalibrierung";
    after_with_sheets: "One more photo of the stand and the floor sheets, where they stood before, shows whether the stand moved on the floor. Whether the vehicle moved it shows only with wheel plates on; put them on again for it, or leave it open.", "Ein weiteres Foto von Gestell und Bodenblättern, wo sie vorher standen, zeigt, ob sich das Gestell auf dem Boden bewegt hat. Ob sich das Fahrzeug bewegt hat, zeigt es nur mit Radplatten; dafür wieder anbringen, oder es offen lassen.";
    after_without_sheets: "This kit has no floor sheets: one more photo shows whether the stand moved against the vehicle only with at least one wheel plate on it. Put it on again when the calibration has ended.", "Dieser Markersatz hat keine Bodenblätter: ein weiteres Foto zeigt nur mit mindestens einer Radplatte am Fahrzeug, ob sich das Gestell dagegen bewegt hat. Nach der Kalibrierung wieder anbringen.";
    moved_words: "{0}: {1} mm and {2}° apart, before and after", "{0}: {1} mm und {2}° Unterschied, vorher und nachher";
    stood_still: "no move proven", "keine Bewegung nachgewiesen";
    has_moved: "has moved", "hat sich bewegt";
    scan_reports: "Reports and other files", "Berichte und andere Dateien";
    scan_before: "Scan report before", "Diagnosebericht vorher";
    scan_after: "Scan report after", "Diagnosebericht nachher";
    other_file: "Other file", "Andere Datei";
    attach: "Attach", "Anhängen";
    no_files: "No file attached.", "Keine Datei angehängt.";
    close_job: "Close the job", "Auftrag abschließen";
    close_why: "Photos, inputs, result and report are sealed in an evidence folder. After that nothing can be changed here.", "Fotos, Eingaben, Ergebnis und Bericht werden in einem Nachweisordner versiegelt. Danach lässt sich hier nichts mehr ändern.";
    close_open: "Still open: {0}", "Noch offen: {0}";
    open_prerequisites: "prerequisites without answer", "unbeantwortete Voraussetzungen";
    open_verdict: "the set-up is not proven to be within", "die Aufstellung ist nicht als innerhalb nachgewiesen";
    open_result: "the calibration's result", "das Ergebnis der Kalibrierung";
    open_after: "the photo after the calibration", "das Foto nach der Kalibrierung";
    close_now: "Seal and close", "Versiegeln und abschließen";
    closed_title: "Closed and sealed", "Abgeschlossen und versiegelt";
    take_evidence: "Download evidence (one file)", "Nachweis herunterladen (eine Datei)";
    send_photos: "Send the photos", "Fotos senden";
    send_file: "Send the file", "Datei senden";
    evidence_in: "Evidence folder: {0}", "Nachweisordner: {0}";
    signed_words: "Signed with this computer's key.", "Mit dem Schlüssel dieses Rechners signiert.";
    unsigned_words: "Not signed: it shows changes by chance, not by intent.", "Nicht signiert: er zeigt zufällige Änderungen, keine absichtlichen.";

    cautions: "The vehicle maker's service information and local rules govern. For trained people; lasers and lifted vehicles need their own precautions. This page documents a set-up and does not replace the procedure.", "Maßgeblich sind die Unterlagen des Fahrzeugherstellers und örtliche Regeln. Nur für Fachpersonal; Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen. Diese Seite dokumentiert eine Aufstellung und ersetzt nicht das Verfahren.";

    pair_title: "Connect this device", "Dieses Gerät verbinden";
    pair_why: "Enter the code to use this page.", "Code eingeben, um diese Seite zu benutzen.";
    pair_now: "Connect", "Verbinden";
    pair_code: "Code on the terminal", "Code auf dem Bildschirm des Servers";
    pair_name: "A name for this device", "Ein Name für dieses Gerät";
    pair_name_why: "Optional; stands in each job's list of changes, such as: left bay's phone.", "Freiwillig; steht in der Liste der Änderungen jedes Auftrags, etwa: Telefon linker Platz.";
    open_network: "This page is not encrypted: everybody in this network can read along, photos, jobs and this device's key. Taking photos in the page and starting without network need encryption too. Whoever runs the server turns it on.", "Diese Seite ist nicht verschlüsselt: jeder in diesem Netz kann mitlesen, Fotos, Aufträge und den Schlüssel dieses Geräts. Auch Fotos in der Seite und der Start ohne Netz brauchen Verschlüsselung. Wer den Server betreibt, schaltet sie ein.";
    open_network_here: "Not encrypted: this network can read along.", "Nicht verschlüsselt: dieses Netz kann mitlesen.";
    devices: "Connected devices", "Verbundene Geräte";
    devices_why: "Whoever is shown out is refused at once and needs a new code. What a device changed stays in each job's list of changes.", "Wer hinausgewiesen wird, wird sofort abgewiesen und braucht einen neuen Code. Was ein Gerät geändert hat, bleibt in der Liste der Änderungen jedes Auftrags.";
    no_devices: "No device is connected.", "Kein Gerät ist verbunden.";
    this_device: "this device", "dieses Gerät";
    connected_since: "Connected {0}", "Verbunden {0}";
    last_here: "last here {0}", "zuletzt hier {0}";
    show_out: "Show out", "Hinausweisen";
    certificate: "This page's certificate", "Zertifikat dieser Seite";
    certificate_why: "Compare these digits with the terminal's, not with another page: where they are the same, nobody stands between.", "Diese Ziffern mit denen auf dem Bildschirm des Servers vergleichen, nicht mit einer anderen Seite: sind sie gleich, steht niemand dazwischen.";
    certificate_of_page: "SHA-256 of the certificate that the browser shows", "SHA-256 des Zertifikats, das der Browser zeigt";
    certificate_of_root: "SHA-256 of the root that a phone can be told to trust", "SHA-256 der Wurzel, der ein Telefon vertrauen kann";
    root_why: "With the root trusted on this device the browser warns no more, and the page starts without network too. The root can sign nothing else: its key was thrown away.", "Vertraut dieses Gerät der Wurzel, warnt der Browser nicht mehr, und die Seite startet auch ohne Netz. Die Wurzel kann nichts anderes unterschreiben: ihr Schlüssel ist gelöscht.";
    take_root: "Take the root (certificate file)", "Wurzel mitnehmen (Zertifikatsdatei)";
    changes: "Who changed what", "Wer was geändert hat";
    did_begin: "job begun", "Auftrag begonnen";
    did_prepare: "preparation", "Vorbereitung";
    did_photo: "photo", "Foto";
    did_aside: "photo set aside", "Foto beiseitegelegt";
    did_back: "photo brought back", "Foto zurückgeholt";
    did_file: "file attached", "Datei angehängt";
    did_calibration: "calibration", "Kalibrierung";
    did_card: "card", "Karte";
    did_join: "measured with earlier photos", "mit früheren Fotos gemessen";
    did_attempt: "next attempt", "nächster Versuch";
    did_close: "closed", "abgeschlossen";
    pair_wrong: "That is not the code. Read it again from the terminal, or scan the square.", "Das ist nicht der Code. Noch einmal vom Bildschirm ablesen oder das Quadrat einscannen.";
    pair_wait: "Too many wrong codes. Wait a minute.", "Zu viele falsche Codes. Eine Minute warten.";
    trouble_title: "This did not work", "Das ging nicht";

    js_queued: "Waiting on this device for the network: {0}. Nothing is lost.", "Auf diesem Gerät warten auf das Netz: {0}. Nichts geht verloren.";
    js_sending: "Sending {0} …", "{0} wird gesendet …";
    js_kept: "{0} is kept.", "{0} ist aufbewahrt.";
    js_already: "{0} was here already.", "{0} war schon hier.";
    js_aside: "{0} was set aside before. Bring it back below if it is wanted.", "{0} wurde beiseitegelegt. Bei Bedarf unten zurückholen.";
    js_refused: "{0} was not taken: {1}", "{0} wurde nicht angenommen: {1}";
    js_again: "Try again", "Noch einmal";
    js_discard: "Discard", "Verwerfen";
    js_ready: "There is a new verdict.", "Es gibt ein neues Ergebnis.";
    js_other_certificate: "The square that was scanned names another certificate than this page: do not connect, and tell whoever runs the server.", "Das eingescannte Quadrat nennt ein anderes Zertifikat als diese Seite: nicht verbinden und dem Betreiber des Servers Bescheid geben.";
    js_offline: "No connection to the server: what stands here may be old. Photos can be taken and are sent later.", "Keine Verbindung zum Server: was hier steht, kann alt sein. Fotos können aufgenommen werden und werden später gesendet.";
    js_no_store: "This browser keeps no queue: stay on this page until the photos are sent.", "Dieser Browser merkt sich nichts: auf dieser Seite bleiben, bis die Fotos gesendet sind.";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_have_the_same_places_and_no_string_is_empty() {
        let places = |text: &str| -> Vec<bool> { (0..4).map(|i| text.contains(&format!("{{{i}}}"))).collect() };
        assert!(ALL.len() > 100, "{}", ALL.len());
        for (name, english, german) in ALL {
            assert!(!english.trim().is_empty() && !german.trim().is_empty(), "{name}");
            assert_eq!(places(english), places(german), "{name}");
        }
    }

    #[test]
    fn places_are_filled() {
        assert_eq!(fill("{0} of {1}", &["1", "2"]), "1 of 2");
    }
}
