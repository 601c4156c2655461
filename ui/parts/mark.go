package parts

// Mark is a text in a picture.
type Mark struct{ Class, X, Y, Text string }

// NewMark returns a text of a class at a point.
func NewMark(class, x, y, text string) Mark { return Mark{class, x, y, text} }
