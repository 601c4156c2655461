//go:build !outside

package words

// withFrame joins a language's texts of the page and of its frame.
func withFrame(page, frame []string) []string {
	all := append([]string(nil), page...)
	return append(all, frame[frameKeys:]...)
}
