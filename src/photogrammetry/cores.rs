//! Cores that have nothing else to do work on the same photo or job.
//!
//! One photo alone, or one job alone, is shared among all cores: somebody waits for it. In an archive each core has one
//! of its own, and one that waited for another's part would take up a further one meanwhile and hold two photos. So what is
//! under way is counted, and shared only while it is less than there are cores. What comes out is the same to the bit.

use std::sync::atomic::{AtomicUsize, Ordering};

use rayon::prelude::*;

static UNDER_WAY: AtomicUsize = AtomicUsize::new(0);

/// A photo or a job that is worked on.
#[derive(Debug)]
pub struct UnderWay(());

impl UnderWay {
    /// Until it is dropped.
    pub fn begin() -> Self {
        UNDER_WAY.fetch_add(1, Ordering::Relaxed);
        UnderWay(())
    }
}

impl Drop for UnderWay {
    fn drop(&mut self) {
        UNDER_WAY.fetch_sub(1, Ordering::Relaxed);
    }
}

fn to_spare() -> bool {
    UNDER_WAY.load(Ordering::Relaxed) < rayon::current_num_threads()
}

/// What comes of each item, in their order.
pub fn map<T: Sync, R: Send>(items: &[T], one: impl Fn(&T) -> R + Sync + Send) -> Vec<R> {
    if to_spare() { items.par_iter().map(one).collect() } else { items.iter().map(one).collect() }
}

/// The same of items that change, with their index.
pub fn map_mut<T: Send, R: Send>(items: &mut [T], one: impl Fn(usize, &mut T) -> R + Sync + Send) -> Vec<R> {
    let one = |(i, item): (usize, &mut T)| one(i, item);
    if to_spare() {
        items.par_iter_mut().enumerate().map(one).collect()
    } else {
        items.iter_mut().enumerate().map(one).collect()
    }
}

/// Both.
pub fn join<A: Send, B: Send>(a: impl FnOnce() -> A + Send, b: impl FnOnce() -> B + Send) -> (A, B) {
    if to_spare() { rayon::join(a, b) } else { (a(), b()) }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// As many photos under way as there are cores: each is done by whom has it.
    #[test]
    fn what_comes_out_does_not_hang_on_who_works() {
        let mut items: Vec<u64> = (0..1000).collect();
        let alone = (map(&items, |x| x * x), map_mut(&mut items.clone(), |i, x| *x + i as u64));
        let busy: Vec<UnderWay> = (0..rayon::current_num_threads()).map(|_| UnderWay::begin()).collect();
        let here = std::thread::current().id();
        assert!(map(&items, |_| std::thread::current().id()).iter().all(|id| *id == here));
        assert_eq!(alone, (map(&items, |x| x * x), map_mut(&mut items, |i, x| *x + i as u64)));
        assert_eq!(join(|| 1, || 2), (1, 2));
        drop(busy);
    }
}
