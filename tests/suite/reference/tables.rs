//! The table of an audit beside Apache Arrow's reader of Parquet (PyPI's
//! `pyarrow`): every cell against the audit's lines and results.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;

use serde_json::{Value, json};

use super::harness::answer;

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap().map(Result::unwrap) {
        let (path, to) = (entry.path(), to.join(entry.file_name()));
        if path.is_dir() {
            copy(&path, &to);
        } else {
            fs::copy(path, to).unwrap();
        }
    }
}

/// What a row must hold of a result, in the names of the columns.
fn wanted(line: &Value, result: &Value) -> Value {
    let context = &result["context"];
    let list = |key: &str, names: &[&str]| -> Value {
        let all = result[key].as_array().cloned().unwrap_or_default();
        all.iter().map(|e| names.iter().map(|n| (n.to_string(), e[n].clone())).collect::<Value>()).collect()
    };
    let mut row = json!({
        "path": line["path"], "exit": line["exit"], "verdict": line["verdict"], "digest": line["digest"],
        "result": line["result"], "job": result["job"], "message": result["message"], "reason": result["reason"],
        "version": result["tool"]["version"],
        "cameras": context["cameras"].as_array().cloned().unwrap_or_default().iter().map(|c| json!({"camera": c})).collect::<Value>(),
        "inputs": list("inputs", &["role", "file", "sha256"]),
        "findings": list("findings", &["code", "level"]),
        "checks": list("checks", &[
            "quantity", "from", "target", "step", "unit", "verdict", "nominal", "lower", "upper", "value",
            "standard_uncertainty", "expanded_uncertainty",
        ]),
    });
    for key in ["series", "setup", "kit", "vehicle", "technician", "bay", "taken", "attempt"] {
        row[key] = context[key].clone();
    }
    for check in result["checks"].as_array().into_iter().flatten() {
        let from = check["from"].as_str().map_or(String::new(), |f| format!("_from_{f}"));
        let name = format!("{}{from}", check["quantity"].as_str().unwrap());
        row[format!("U_{name}")] = check["expanded_uncertainty"].clone();
        row[name] = check["value"].clone();
    }
    row
}

#[test]
fn arrow_reads_every_cell_of_the_table() {
    let samples: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples"].iter().collect();
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    for name in ["good", "wrong"] {
        copy(&samples.join(name), &root.join(name));
    }
    fs::create_dir_all(root.join("broken")).unwrap();
    fs::write(root.join("broken/job.toml"), "").unwrap();
    let mut command = crate::program::program();
    command.arg("audit").arg(&root).arg("--out").arg(&out).stdout(Stdio::null()).stderr(Stdio::null());
    assert_eq!(command.status().unwrap().code(), Some(2));
    let asked = json!({ "table": out.join("audit.parquet") });
    let Some(answer) = answer("tables.py", &["pyarrow"], &asked) else { return };
    let lines = fs::read_to_string(out.join("audit.jsonl")).unwrap();
    let lines: Vec<Value> = lines.lines().map(|l| serde_json::from_str(l).unwrap()).collect();
    let rows = answer["rows"].as_array().unwrap();
    assert_eq!((rows.len(), lines.len()), (3, 3));
    for (line, row) in lines.iter().zip(rows) {
        let result = fs::read(out.join(line["result"].as_str().unwrap())).unwrap();
        let wanted = wanted(line, &serde_json::from_slice(&result).unwrap());
        for (key, value) in wanted.as_object().unwrap() {
            assert_eq!(&row[key], value, "{key} of {}", line["path"]);
        }
    }
    let types = &answer["types"];
    for (column, kind) in [
        ("path", "string"),
        ("exit", "int32"),
        ("taken_at", "timestamp[ms, tz=UTC]"),
        ("yaw", "double"),
        ("U_yaw", "double"),
    ] {
        assert_eq!(types[column], kind, "{column}");
    }
    // Both moments are the same one, whatever the offset that is written.
    let moment = |text: &Value| {
        time::OffsetDateTime::parse(text.as_str().unwrap(), &time::format_description::well_known::Rfc3339).unwrap()
    };
    let good = rows.iter().find(|r| r["path"].as_str().unwrap().ends_with("good")).unwrap();
    assert_eq!(moment(&good["taken"]), moment(&good["taken_at"]));
}
