//! The course: book, pages and papers.
pub mod book;
pub mod pages;
