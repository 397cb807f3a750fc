//! Which devices a page lets in that the network can reach.

use super::client::Server;

fn code(server: &Server) -> String {
    server.said.split("/pair/").nth(1).unwrap().split_whitespace().next().unwrap().to_owned()
}

#[test]
fn a_device_needs_the_code_and_gets_its_own_token() {
    let jobs = tempfile::tempdir().unwrap();
    let mut server = Server::start_at(jobs.path(), None, "0.0.0.0:0");
    server.at.set_ip("127.0.0.1".parse().unwrap());
    let code = code(&server);
    assert_eq!((server.get("/").status, server.get("/").header("location")), (303, Some("/pair")));
    assert_eq!(server.request("GET", "/", &[], &[]).status, 401);
    assert_eq!(server.upload("/jobs/x/photos", b"x").status, 401);
    assert_eq!(server.get("/jobs/x/report").status, 303);
    assert!(!server.get("/page.js").body.is_empty());
    assert_eq!(server.form("/pair", &[("code", "AAAAAAAAAA")]).status, 403);
    // An address that a scanner fetches by itself connects nobody.
    let scanned = server.get(&format!("/pair/{code}"));
    assert!(scanned.status == 200 && scanned.header("set-cookie").is_none());
    let mut tokens = Vec::new();
    for _ in 0..2 {
        let paired = server.form("/pair", &[("code", &code)]);
        let cookie = paired.header("set-cookie").unwrap().to_owned();
        assert!(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), "{cookie}");
        tokens.push(cookie.split(';').next().unwrap().to_owned());
    }
    assert_ne!(tokens[0], tokens[1]);
    server.cookie = tokens[0].clone();
    assert_eq!(server.get("/").status, 200);
    // A device stays connected when the server starts again; the code is another one.
    server.kill();
    let mut again = Server::start_at(jobs.path(), None, "0.0.0.0:0");
    again.at.set_ip("127.0.0.1".parse().unwrap());
    again.cookie = tokens[1].clone();
    assert_eq!(again.get("/").status, 200);
    assert!(again.said.contains("Code for devices"));
    again.cookie = "baywitness-device=0000".into();
    assert_eq!(again.get("/").status, 303);
}
