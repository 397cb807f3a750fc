//! What commands write beside the schemas that are made from the types, by PyPI's
//! jsonschema (draft 2020-12).

use baywitness::record::schema;
use serde_json::{Value, json};

use super::harness::answer;

/// What a command prints as JSON.
fn printed(arguments: &[&str]) -> Value {
    let out = crate::program::program()
        .args(arguments)
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .env_remove("BAYWITNESS_MODELS")
        .output()
        .unwrap();
    serde_json::from_slice(&out.stdout).unwrap_or_else(|e| panic!("{e}: {}", String::from_utf8_lossy(&out.stderr)))
}

/// What is wrong with each instance; `None` where the library is not there.
fn wrong(format: &str, instances: &[Value]) -> Option<Vec<Vec<String>>> {
    let schema: Value = serde_json::from_str(&schema(format).unwrap()).unwrap();
    let said = answer("schemas.py", &["jsonschema"], &json!({ "schema": schema, "instances": instances }))?;
    Some(serde_json::from_value(said).unwrap())
}

#[test]
fn results_are_what_their_schema_says() {
    let [good, now] = ["samples/good", "samples/wrong"].map(|job| printed(&["verify", job, "--json", "-"]));
    let Some(said) = wrong("result/1", &[good, now.clone()]) else { return };
    assert!(said.iter().all(Vec::is_empty), "{said:#?}");
    // The schema refuses what no result is.
    let mut broken = [now.clone(), now.clone(), now.clone(), now];
    broken[0]["verdict"] = json!("passed");
    broken[1]["checks"][0]["value"] = json!("2 mm");
    broken[2].as_object_mut().unwrap().remove("findings");
    broken[3]["format"] = json!("result/2");
    let said = wrong("result/1", &broken).unwrap();
    assert!(said.iter().all(|w| !w.is_empty()), "{said:#?}");
}

#[test]
fn plans_and_examined_sheets_are_what_their_schemas_say() {
    let plan = printed(&["plan", "--kit", "bay-a4", "--setup", "radar-plate", "--photos", "2", "--json", "-"]);
    let Some(said) = wrong("plan/1", &[plan]) else { return };
    assert!(said.iter().all(Vec::is_empty), "{said:#?}");
    let sheet = printed(&["setup", "check", "radar-plate", "--json", "-"]);
    let said = wrong("setup-check/1", &[sheet]).unwrap();
    assert!(said.iter().all(Vec::is_empty), "{said:#?}");
}
