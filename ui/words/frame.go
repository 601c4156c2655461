//go:build !outside

package words

// joined are a language's texts of the page, of its frame and of the visit.
func joined(page, frame, visit []string) []string {
	all := append([]string(nil), page...)
	all = append(all, frame[frameKeys:]...)
	return append(all, visit[visitKeys:]...)
}
