//! The door to the browser: plain functions that pass text by address and length.

#![allow(unreachable_pub)] // Exported by name.
#![allow(unsafe_code)] // Text comes in and goes out through memory that both sides see; each use says why it is sound.

use std::cell::RefCell;

#[cfg(not(feature = "pictures"))]
use drivecourse_machine::relation::away;

#[cfg(not(feature = "pictures"))]
use crate::Desk as Inside;
#[cfg(feature = "pictures")]
use crate::Easel as Inside;

thread_local! {
    static INSIDE: RefCell<Option<Inside>> = const { RefCell::new(None) };
}

/// Room for `len` bytes; given back with [`free`] or taken over by [`run`].
// The page calls it by name; there is no other function of this name.
#[unsafe(no_mangle)]
pub extern "C" fn alloc(len: usize) -> *mut u8 {
    Box::into_raw(vec![0_u8; len].into_boxed_slice()).cast()
}

/// Gives back room from [`alloc`] or [`run`].
///
/// # Safety
/// `at` and `len` come from `alloc` or `run`, and are given back once.
// The page calls it by name; there is no other function of this name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn free(at: *mut u8, len: usize) {
    // SAFETY: both came from a boxed slice of that length, and the page gives each back once.
    drop(unsafe { Box::from_raw(core::ptr::slice_from_raw_parts_mut(at, len)) });
}

/// Takes over the request at `at`, and returns the reply: its address in the upper half, its length in the lower.
///
/// The first request of a page is the bundle itself; it is answered with the digest of the sources.
///
/// # Safety
/// `at` and `len` come from `alloc`, and are not used again.
// The page calls it by name; there is no other function of this name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn run(at: *mut u8, len: usize) -> u64 {
    // SAFETY: `alloc` made this boxed slice, and the page leaves it to us.
    let bytes = unsafe { Box::from_raw(core::ptr::slice_from_raw_parts_mut(at, len)) };
    let reply = match core::str::from_utf8(&bytes) {
        Ok(request) => INSIDE.with_borrow_mut(|inside| match inside {
            Some(inside) => inside.answer(request),
            None => match Inside::open(request) {
                Ok(opened) => {
                    *inside = Some(opened);
                    ["{\"sources\":\"", crate::SOURCES, "\"}"].concat()
                }
                Err(error) => ["{\"error\":\"", &error, "\"}"].concat(),
            },
        }),
        Err(_) => "{\"error\":\"This request is not text.\"}".to_owned(),
    };
    let reply = reply.into_bytes().into_boxed_slice();
    let len = reply.len() as u64;
    ((Box::into_raw(reply).cast::<u8>() as usize as u64) << 32) | len
}

/// Connects a module of calculations: its own place, and where its `work` stands in this module's table of functions.
///
/// # Safety
/// `work` is the place of a function of the type [`away::Calculation`], and stays it.
// The page calls it by name; there is no other function of this name.
#[cfg(not(feature = "pictures"))]
#[unsafe(no_mangle)]
pub unsafe extern "C" fn connect(place: u32, work: usize) {
    // SAFETY: in WebAssembly a function's address is its place in the table, and each call checks the type there.
    let work = unsafe { core::mem::transmute::<usize, away::Calculation>(work) };
    away::connect(place as usize, work);
}
