package scenario

// FieldSet is a set of fields, of 256 at most.
type FieldSet [4]uint64

// Has tells whether a field is in the set.
func (s FieldSet) Has(f FieldID) bool { return s[f/64]&(1<<(f%64)) != 0 }

// With returns the set with fields added.
func (s FieldSet) With(list ...FieldID) FieldSet {
	for _, f := range list {
		s[f/64] |= 1 << (f % 64)
	}
	return s
}

// Without returns the set with fields taken out.
func (s FieldSet) Without(list ...FieldID) FieldSet {
	for _, f := range list {
		s[f/64] &^= 1 << (f % 64)
	}
	return s
}

// AllFields returns the set of all fields.
func AllFields() (s FieldSet) {
	for f := range fieldCount {
		s = s.With(f)
	}
	return s
}
