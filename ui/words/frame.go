//go:build !outside

package words

// joined are a language's texts of the page and of its frame.
func joined(page, frame []string) []string {
	return append(append([]string(nil), page...), frame[frameKeys:]...)
}
