//! The command-line door: everything happens in the library.

fn main() -> std::process::ExitCode {
    baywitness::cli::run()
}
