list-and = { $others } und { $last }
