list-and = { $others } y { $last }
