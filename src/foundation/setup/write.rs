//! Writing set-up sheets (`setup/1`).

use crate::input::Writer;

use super::check_file::MM_PER_INCH;
use super::file::{FORMAT, RULES};
use super::sheet::{Check, Decision, Evidence, Limits, Procedure, Setup};

impl Setup {
    /// The set-up sheet's text. Limits are written as `lower` and `upper`.
    pub fn to_toml(&self) -> String {
        let mut w = Writer::new(FORMAT);
        w.key("name", self.name.as_str());
        w.key("title", self.title.as_str());
        w.key("source", self.source.as_str());
        w.key("reference_line", self.reference_line.name());
        if !self.steps.is_empty() {
            w.key("steps", self.steps.clone());
        }
        w.table("decision");
        w.maybe("rule", RULES.iter().find(|(_, rule)| *rule == self.decision.rule).map(|(name, _)| *name));
        w.key("conformance_probability", self.decision.conformance_probability);
        if self.decision.photos_after_move != Decision::PHOTOS_AFTER_MOVE {
            w.key("photos_after_move", self.decision.photos_after_move as i64);
        }
        if let Some(procedure) = &self.procedure {
            write_procedure(&mut w, procedure);
        }
        for datum in &self.datums {
            w.item("datum");
            w.key("name", datum.name.as_str());
            w.key("carrier", datum.carrier.as_str());
            w.numbers("offset_mm", &datum.offset_mm);
            w.key("u_mm", datum.u_mm);
        }
        for prerequisite in &self.prerequisites {
            w.item("prerequisite");
            w.key("id", prerequisite.id.as_str());
            w.key("text", prerequisite.text.as_str());
            w.key("required", prerequisite.required);
        }
        for check in &self.checks {
            write_check(&mut w, check);
        }
        for waiver in &self.waived {
            w.item("waived");
            w.key("quantity", waiver.quantity.name());
            w.key("because", waiver.because.as_str());
        }
        if self.limits != Limits::default() {
            w.table("limits");
            w.maybe("floor_slope_deg", self.limits.floor_slope_deg);
            w.maybe("floor_flatness_mm_per_m", self.limits.floor_flatness_mm_per_m);
            w.maybe("free_ahead_mm", self.limits.free_ahead_mm);
        }
        if self.credentials_required {
            w.table("evidence");
            w.key("credentials", "required");
        }
        w.finish()
    }
}

fn write_procedure(w: &mut Writer, procedure: &Procedure) {
    w.table("procedure");
    w.maybe("document", procedure.document.as_deref());
    w.maybe("revision", procedure.revision.as_deref());
    w.maybe("opened", procedure.opened.map(Writer::date));
    w.maybe("applies_to", procedure.applies_to.as_deref());
}

fn write_check(w: &mut Writer, check: &Check) {
    let scale = if check.in_inches { MM_PER_INCH } else { 1.0 };
    w.item("check");
    w.key("quantity", check.quantity.name());
    w.maybe("from", check.from.as_ref().map(|f| f.name()));
    if check.in_inches {
        w.key("unit", "in");
    }
    w.key("nominal", check.nominal / scale);
    w.maybe("lower", check.lower.map(|x| x / scale));
    w.maybe("upper", check.upper.map(|x| x / scale));
    w.maybe("tolerance_basis", check.tolerance_basis.as_deref());
    w.maybe("target", check.target.as_deref());
    w.maybe("step", check.step.as_deref());
    w.maybe("reference_line", check.reference_line.map(|l| l.name()));
    if check.evidence == Evidence::Reading {
        w.key("evidence", "reading");
    }
}
