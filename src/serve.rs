//! `serve`: the course on this machine's own address, built again whenever a file of the module changes.

use std::path::{Component, Path};
use std::sync::{Arc, RwLock};
use std::time::{Duration, SystemTime};

use anyhow::{Result, anyhow};
use drivecourse_machine::language::{self, Message};
use drivecourse_machine::messages;
use tiny_http::{Header, Method, Request, Response, Server};

use crate::assets::{Files, read_folder};
use crate::{bank, cli, course, files, words};

messages! { pub(crate) SAYS {
    SHOWS = "serve-shows", "{address} shows the course to this machine alone; end it with Ctrl+C";
    WATCHING = "serve-watching", "watching {folder}";
    BUILT_AGAIN = "serve-built-again", "built again";
    // On pages.
    NOT_BY_THIS_NAME = "serve-not-by-this-name", "This server answers to 127.0.0.1 and localhost alone.";
    READ_ONLY = "serve-read-only", "Pages here can be read, nothing else.";
    NO_PAGE = "serve-no-page", "There is no such page.";
    NOT_SERVED = "serve-not-served", "Not while serving.";
    NO_COURSE = "serve-no-course", "No course yet";
    FIRST_FAILED = "serve-first-failed", "The first build failed. This page shows the course as soon as one succeeds.";
    NO_SUCH_PAGE = "serve-no-such-page", "No such page";
    TO_THE_START = "serve-to-the-start", "To the start of the course";
    ENDED = "serve-ended", "The server has ended; these pages no longer follow the files.";
} }

messages! { pub(crate) ERRORS {
    CANNOT_LISTEN = "error-cannot-listen", "cannot listen on port {port}: {error}; choose another one with --port, or 0 for any";
} }

/// How often the module's files are looked at.
const EVERY: Duration = Duration::from_millis(400);
/// Where a page asks whether the course has changed.
const STATE: &str = "~state";
/// The script that asks; added to every page while serving, and in no file of the course.
const SCRIPT: &str = "~serve.js";

/// What is being served.
#[derive(Default)]
struct Shown {
    /// The last good build.
    pages: Files,
    /// Counts builds, good and bad.
    build: u64,
    /// What is wrong with the last build, if anything.
    error: Option<String>,
}

pub(crate) fn run(options: &cli::Serve, speech: &cli::Speech) -> Result<()> {
    let module = options.module.folder();
    let module = module.as_deref();
    let shown = Arc::new(RwLock::new(Shown::default()));
    let mut state = module.map(fingerprint);
    build_into(&shown, options, speech);
    let server = Server::http(("127.0.0.1", options.port)).map_err(|error| {
        anyhow!(CANNOT_LISTEN.say(&[("port", &options.port.to_string()), ("error", &error.to_string())]))
    })?;
    let port = server.server_addr().to_ip().map_or(options.port, |address| address.port());
    files::say(SHOWS.say(&[("address", &format!("http://127.0.0.1:{port}/"))]))?;
    if let Some(module) = module {
        eprintln!("drivecourse: {}", WATCHING.say(&[("folder", &module.display().to_string())]));
        let (shown, module) = (Arc::clone(&shown), module.to_path_buf());
        let (options, speech) = (options.clone(), speech.clone());
        std::thread::spawn(move || {
            loop {
                std::thread::sleep(EVERY);
                let now = Some(fingerprint(&module));
                if now != state {
                    state = now;
                    build_into(&shown, &options, &speech);
                }
            }
        });
    }
    for request in server.incoming_requests() {
        // A reader who went away is nobody's trouble.
        let _ = answer(request, &shown, port);
    }
    Ok(())
}

/// Builds, and shows what came of it in the terminal and to the pages; a bad build leaves the last good one standing.
fn build_into(shown: &RwLock<Shown>, options: &cli::Serve, speech: &cli::Speech) {
    let built = build(options, speech);
    // A thread that panicked while holding the lock ends the program's use anyway.
    let mut shown = shown.write().unwrap_or_else(std::sync::PoisonError::into_inner);
    shown.build += 1;
    match built {
        Ok((pages, warnings)) => {
            warnings.iter().for_each(|warning| eprintln!("drivecourse: {warning}"));
            if shown.build > 1 {
                eprintln!("drivecourse: {}", BUILT_AGAIN.text());
            }
            (shown.pages, shown.error) = (pages, None);
        }
        Err(error) => {
            eprintln!("drivecourse: {error:#}");
            shown.error = Some(format!("{error:#}"));
        }
    }
}

fn build(options: &cli::Serve, speech: &cli::Speech) -> Result<(Files, Vec<String>)> {
    let module = options.module.folder();
    let assets = words::begin(&options.module, speech)?;
    let bank = bank::load(&assets)?;
    let units = course::units(&assets, options.units);
    let place = tempfile::tempdir()?;
    let built = course::build(&assets, bank, &place.path().join("course"), units, module.as_deref())?;
    Ok((read_folder(&built.folder)?, built.warnings))
}

/// Names, lengths and times of everything in the module that a course is made of.
fn fingerprint(module: &Path) -> Vec<(String, u64, Option<SystemTime>)> {
    let mut found = Vec::new();
    let mut open: Vec<_> = ["book", "scenarios", "theme"].iter().map(|name| module.join(name)).collect();
    while let Some(folder) = open.pop() {
        // A folder that cannot be listed now is noticed by the build.
        for entry in std::fs::read_dir(&folder).into_iter().flatten().flatten() {
            let path = entry.path();
            match entry.metadata() {
                Ok(data) if data.is_dir() => open.push(path),
                Ok(data) => found.push((path.display().to_string(), data.len(), data.modified().ok())),
                Err(_) => found.push((path.display().to_string(), 0, None)),
            }
        }
    }
    let settings = module.join(crate::assets::MANIFEST);
    if let Ok(data) = settings.metadata() {
        found.push((settings.display().to_string(), data.len(), data.modified().ok()));
    }
    found.sort();
    found
}

fn answer(request: Request, shown: &RwLock<Shown>, port: u16) -> std::io::Result<()> {
    let shown = shown.read().unwrap_or_else(std::sync::PoisonError::into_inner);
    let (code, kind, body) = reply(&request, &shown, port);
    let mut response = Response::from_data(body).with_status_code(code);
    for (name, value) in [("Content-Type", kind), ("Cache-Control", "no-store"), ("X-Content-Type-Options", "nosniff")]
    {
        // Names and values are ours and plain ASCII.
        if let Ok(header) = Header::from_bytes(name, value) {
            response.add_header(header);
        }
    }
    drop(shown);
    request.respond(response)
}

fn reply(request: &Request, shown: &Shown, port: u16) -> (u16, &'static str, Vec<u8>) {
    const TEXT: &str = "text/plain; charset=utf-8";
    const HTML: &str = "text/html; charset=utf-8";
    // A page from elsewhere must not reach this server by a name of its own for this address.
    let host = request.headers().iter().find(|header| header.field.equiv("Host")).map(|header| header.value.as_str());
    let ours = [format!("127.0.0.1:{port}"), format!("localhost:{port}")];
    if !host.is_some_and(|host| ours.iter().any(|name| name == host)) {
        return (403, TEXT, line(NOT_BY_THIS_NAME));
    }
    if !matches!(request.method(), Method::Get | Method::Head) {
        return (405, TEXT, line(READ_ONLY));
    }
    let address = request.url().split(['?', '#']).next().unwrap_or_default();
    let Some(name) = page_name(address) else { return (404, TEXT, line(NO_PAGE)) };
    match name.as_str() {
        STATE => {
            let state = serde_json::json!({ "build": shown.build, "error": shown.error });
            return (200, "application/json", state.to_string().into_bytes());
        }
        SCRIPT => return (200, kind(SCRIPT), watcher().into_bytes()),
        // The pages of a course being written must never come out of a store.
        "service-worker.js" => return (404, TEXT, line(NOT_SERVED)),
        _ => {}
    }
    match shown.pages.get(&name) {
        Some(page) if name.ends_with(".html") => (200, HTML, watched(page)),
        Some(file) => (200, kind(&name), file.clone()),
        None if shown.pages.is_empty() => (200, HTML, watched(page(NO_COURSE, FIRST_FAILED.text()).as_bytes())),
        None => {
            (404, HTML, watched(page(NO_SUCH_PAGE, &format!("<a href=\"/\">{}</a>", TO_THE_START.text())).as_bytes()))
        }
    }
}

/// The file that an address asks for; `None` for one that leads out of the course or cannot be read.
fn page_name(address: &str) -> Option<String> {
    let plain = percent_encoding::percent_decode_str(address.strip_prefix('/')?).decode_utf8().ok()?;
    let named =
        if plain.is_empty() || plain.ends_with('/') { format!("{plain}index.html") } else { plain.into_owned() };
    let inside = Path::new(&named).components().all(|part| matches!(part, Component::Normal(_)));
    (inside && !named.contains('\\')).then_some(named)
}

fn kind(name: &str) -> &'static str {
    match name.rsplit('.').next().unwrap_or_default() {
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "json" | "webmanifest" => "application/json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" | "jpeg" => "image/jpeg",
        "wasm" => "application/wasm",
        "woff2" => "font/woff2",
        "md" | "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// `page` with the script that watches for changes at the end of its head.
fn watched(page: &[u8]) -> Vec<u8> {
    let text = String::from_utf8_lossy(page);
    text.replacen("</head>", &format!("<script src=\"/{SCRIPT}\" defer></script></head>"), 1).into_bytes()
}

/// One line of text.
fn line(says: Message) -> Vec<u8> {
    format!("{}\n", says.text()).into_bytes()
}

/// A page of this server's own, with a heading and one paragraph of markup.
fn page(heading: Message, markup: &str) -> String {
    let (tag, heading) = (language::code(), heading.text());
    format!(
        "<!DOCTYPE html><html lang=\"{tag}\"><head><title>{heading}</title></head>\
         <body><h1>{heading}</h1><p>{markup}</p></body></html>"
    )
}

/// The script that watches, in the language spoken.
fn watcher() -> String {
    // A string of JSON is one of the script's too.
    WATCHER.replace("@ENDED@", &serde_json::json!(ENDED.text()).to_string())
}

/// Asks for the state once a second; loads the page again after a good build and shows what is wrong with a bad one.
const WATCHER: &str = r#""use strict";
(() => {
  let build = null, note = null;
  const show = (error) => {
    if (!error) { note?.remove(); note = null; return; }
    if (!note) {
      note = document.createElement("pre");
      note.setAttribute("role", "alert");
      note.style.cssText = "position:fixed;inset:auto 0 0 0;z-index:99;margin:0;max-height:60vh;overflow:auto;padding:1rem;" +
        "background:#fff;color:#000;border-top:4px solid #000;font:14px/1.4 monospace;white-space:pre-wrap";
      document.body.append(note);
    }
    if (note.textContent !== error) note.textContent = error;
  };
  const ask = async () => {
    try {
      const state = await (await fetch("/~state", { cache: "no-store" })).json();
      if (build !== null && state.build !== build && !state.error) { location.reload(); return; }
      build = state.error ? build ?? state.build : state.build;
      show(state.error);
    } catch {
      show(@ENDED@);
    }
    setTimeout(ask, 1000);
  };
  ask();
})();
"#;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_stay_inside_the_course() {
        assert_eq!(page_name("/").as_deref(), Some("index.html"));
        assert_eq!(page_name("/a%20b/c.html").as_deref(), Some("a b/c.html"));
        assert_eq!(page_name("/css/").as_deref(), Some("css/index.html"));
        for address in
            ["", "x", "/../secret", "/%2e%2e/secret", "//etc/passwd", "/a/..\\b", "/%ff", "/./a", "/a/../../b"]
        {
            let name = page_name(address);
            assert!(
                name.as_deref().is_none_or(|name| !name.contains("..") && !name.starts_with('/')),
                "{address} {name:?}"
            );
        }
        assert_eq!(page_name("/%2e%2e/secret"), None);
    }

    #[test]
    fn the_watcher_goes_into_the_head_once() {
        let page = watched(b"<head></head><body>&lt;/head> </head></body>");
        assert_eq!(String::from_utf8(page).unwrap().matches("<script").count(), 1);
    }
}
