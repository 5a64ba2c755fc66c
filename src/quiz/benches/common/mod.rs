//! The built-in scenarios, read from disk.

use drivecourse_quiz::Bank;

/// Every family and item.
pub(crate) fn bank() -> Bank {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios");
    let mut files = Vec::new();
    for folder in ["families", "items"] {
        let mut paths: Vec<_> =
            std::fs::read_dir(root.join(folder)).unwrap().map(|entry| entry.unwrap().path()).collect();
        paths.sort();
        for path in paths {
            let name = format!("{folder}/{}", path.file_name().unwrap().to_string_lossy());
            files.push((name, std::fs::read(path).unwrap()));
        }
    }
    let (bank, problems) = Bank::read(files.iter().map(|(name, bytes)| (name.as_str(), bytes.as_slice())));
    assert!(problems.is_empty(), "{problems:?}");
    bank
}
