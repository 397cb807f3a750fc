list-and = { $others } et { $last }
