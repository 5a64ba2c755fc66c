//! `serve`: pages on this machine alone, built again when a file changes, problems shown in the page.

use std::io::{BufRead as _, BufReader, Read as _, Write as _};
use std::net::TcpStream;
use std::process::{Child, Command, Stdio};
use std::thread::sleep;
use std::time::Duration;

use serde_json::Value;

use crate::{PROGRAM, Place};

/// A server, ended with the test.
struct Served {
    child: Child,
    address: String,
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Served {
    fn start(place: &Place, arguments: &[&str]) -> Self {
        let mut command = Command::new(PROGRAM);
        command.args(["serve", "--port", "0"]).args(arguments).current_dir(place.path(""));
        let mut child = command.stdout(Stdio::piped()).stderr(Stdio::null()).spawn().unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        let address = line.strip_prefix("http://").unwrap().split('/').next().unwrap().to_owned();
        assert!(address.starts_with("127.0.0.1:"), "{line}");
        Self { child, address }
    }

    fn ask(&self, request: &str) -> String {
        let mut stream = TcpStream::connect(&self.address).unwrap();
        stream.write_all(request.as_bytes()).unwrap();
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).unwrap();
        String::from_utf8_lossy(&answer).into_owned()
    }

    fn get(&self, path: &str) -> String {
        self.ask(&format!("GET {path} HTTP/1.1\r\nHost: {}\r\nConnection: close\r\n\r\n", self.address))
    }

    fn state(&self) -> Value {
        let answer = self.get("/~state");
        serde_json::from_str(answer.split("\r\n\r\n").nth(1).unwrap()).unwrap()
    }

    /// The state once `done` holds of it; a build takes as long as it takes.
    fn wait(&self, done: impl Fn(&Value) -> bool) -> Value {
        for _ in 0..1200 {
            let state = self.state();
            if done(&state) {
                return state;
            }
            sleep(Duration::from_millis(100));
        }
        panic!("never: {}", self.state());
    }
}

#[test]
fn pages_follow_the_files_and_show_what_is_wrong() {
    let place = Place::new();
    place.module("plant");
    place.write("plant/book/SUMMARY.md", "# Contents\n\n- [Start](start.md)\n");
    place.write("plant/book/start.md", "# Start here\n\nFirst words.\n");
    let served = Served::start(&place, &["--module", "plant"]);

    let page = served.get("/start.html");
    assert!(page.starts_with("HTTP/1.1 200") && page.contains("First words.") && page.contains("~serve.js"), "{page}");
    assert!(page.contains("text/html") && page.contains("no-store"));
    assert!(served.get("/").contains("First words."));
    let style = page.split("href=\"").map(|part| part.split('"').next().unwrap()).find(|link| link.ends_with(".css"));
    assert!(served.get(&format!("/{}", style.unwrap())).contains("text/css"));
    assert!(served.get("/~serve.js").contains("text/javascript"));
    assert!(served.get("/nowhere.html").starts_with("HTTP/1.1 404"));
    for outside in ["/../secret", "/%2e%2e/%2e%2e/etc/passwd"] {
        assert!(served.get(outside).starts_with("HTTP/1.1 404"));
    }
    // Neither another name for this address nor anything but reading is answered.
    let foreign = served.ask("GET / HTTP/1.1\r\nHost: example.org\r\nConnection: close\r\n\r\n");
    assert!(foreign.starts_with("HTTP/1.1 403") && !foreign.contains("First words"));
    let post = format!("POST / HTTP/1.1\r\nHost: {}\r\nContent-Length: 0\r\nConnection: close\r\n\r\n", served.address);
    assert!(served.ask(&post).starts_with("HTTP/1.1 405"));
    assert_eq!(served.state()["error"], Value::Null);

    place.write("plant/book/start.md", "# Start here\n\n```practice\nitem = \"zebra\"\n```\n");
    let state = served.wait(|state| state["error"] != Value::Null);
    let error = state["error"].as_str().unwrap();
    assert!(error.contains("start.md:4:8") && error.contains("zebra"), "{error}");
    assert!(!error.contains("/tmp"), "{error}");
    assert!(served.get("/start.html").contains("First words."), "the last good course stays");

    place.write("plant/book/start.md", "# Start here\n\nSecond words.\n");
    served.wait(|state| state["error"] == Value::Null && state["build"].as_u64() > Some(2));
    assert!(served.get("/start.html").contains("Second words."));
}

#[test]
fn a_port_in_use_is_named() {
    let place = Place::new();
    let taken = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
    let port = taken.local_addr().unwrap().port().to_string();
    place.run(&["serve", "--port", &port]).refused(&["cannot listen on port", &port, "--port"]);
}
