//! Memory for the browser's modules: pieces of 16, 32, 64 ... bytes. One that is given back waits in a list of its size
//! for the next of that size, and is never cut or joined. A request frees what it took, so a page keeps what its largest
//! one needed; the common allocator, which joins pieces, would be thousands of bytes more in every module.

#![allow(unsafe_code)] // An allocator hands out plain memory; each use says why it is sound.

use core::alloc::{GlobalAlloc, Layout};
use core::arch::wasm32::memory_grow;
use core::cell::Cell;
use core::ptr::null_mut;

/// The exponent of the smallest piece, whose start suits every type that is used.
const LEAST: u32 = 4;
/// The memory grows by pages of this many bytes (WebAssembly core specification, section 4.2.8).
const PAGE: usize = 65_536;

/// All memory that does not belong to the program itself.
struct Pieces {
    /// By their sizes, the pieces given back; each begins with the address of the next.
    waiting: [Cell<*mut u8>; (usize::BITS - LEAST) as usize],
    /// Where the next new piece begins, and where the memory ends.
    next: Cell<usize>,
    end: Cell<usize>,
}

#[global_allocator]
static PIECES: Pieces = Pieces {
    waiting: [const { Cell::new(null_mut()) }; (usize::BITS - LEAST) as usize],
    next: Cell::new(0),
    end: Cell::new(0),
};

// SAFETY: these modules are run by one thread, and share their memory with no other.
unsafe impl Sync for Pieces {}

/// Which size of pieces holds `layout`; more than all there are where none does.
fn size(layout: Layout) -> usize {
    let bytes = layout.size().max(1 << LEAST);
    (usize::BITS - (bytes - 1).leading_zeros() - LEAST) as usize
}

impl Pieces {
    /// A piece of `bytes` that nobody has had yet.
    fn carve(&self, bytes: usize) -> *mut u8 {
        if self.end.get() - self.next.get() < bytes {
            let pages = bytes.div_ceil(PAGE);
            let before = memory_grow(0, pages);
            if before == usize::MAX {
                return null_mut();
            }
            if before * PAGE != self.end.get() {
                self.next.set(before * PAGE);
            }
            self.end.set((before + pages) * PAGE);
        }
        let at = self.next.get();
        self.next.set(at + bytes);
        at as *mut u8
    }
}

// SAFETY: a piece is handed out once until it comes back, is at least as large as asked for, and begins at a multiple of
// 16, as all sizes are and the first one does.
unsafe impl GlobalAlloc for Pieces {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        let size = size(layout);
        let Some(waiting) = self.waiting.get(size).filter(|_| layout.align() <= 1 << LEAST) else { return null_mut() };
        let first = waiting.get();
        if first.is_null() {
            return self.carve(1 << (size as u32 + LEAST));
        }
        // SAFETY: a piece that waits holds the address of the next one.
        waiting.set(unsafe { first.cast::<*mut u8>().read() });
        first
    }

    unsafe fn dealloc(&self, at: *mut u8, layout: Layout) {
        if let Some(waiting) = self.waiting.get(size(layout)) {
            // SAFETY: the piece is ours again, and every size has room for an address.
            unsafe { at.cast::<*mut u8>().write(waiting.replace(at)) };
        }
    }

    unsafe fn realloc(&self, at: *mut u8, layout: Layout, bytes: usize) -> *mut u8 {
        // SAFETY: whoever calls keeps to the alignment, and `bytes` does not overflow with it.
        let wanted = unsafe { Layout::from_size_align_unchecked(bytes, layout.align()) };
        if size(wanted) == size(layout) {
            return at;
        }
        // SAFETY: as two calls; the old piece is as large as what is copied from it, and given back after that.
        unsafe {
            let to = self.alloc(wanted);
            if !to.is_null() {
                to.copy_from_nonoverlapping(at, layout.size().min(bytes));
                self.dealloc(at, layout);
            }
            to
        }
    }
}
