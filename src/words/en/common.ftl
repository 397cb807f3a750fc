list-and = { $others } and { $last }
