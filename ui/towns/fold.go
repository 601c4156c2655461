package towns

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Plain letters of the Latin ones from U+00C0 and from U+1E00, in order; _ where there is no
// one letter. By the decompositions of Unicode.
const (
	latinFrom, moreFrom = 0xC0, 0x1E00
	latin               = "aaaaaa_ceeeeiiiidnooooo_ouuuuy__aaaaaa_ceeeeiiiidnooooo_ouuuuy_yaaaaaaccccccccddddeeeeeeeeeegggg" +
		"gggghhhhiiiiiiiiii__jjkkkllllllllllnnnnnnnnnoooooo__rrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs" +
		"_b____o___d___eee_______kk______oo_____________uu__yy________________________aaiioouuuuuuuuuueaa" +
		"aa____ggkkoooo__j___gg__nnaa__ooaaaaeeeeiiiioooorrrruuuusstt__hh______aaeeooooooooyy____________" +
		"________________"
	more = "aabbbbbbccddddddddddeeeeeeeeeeffgghhhhhhhhhhiiiikkkkkkllllllllmmmmmmnnnnnnnnoooooooopppprrrrrrrr" +
		"ssssssssssttttttttuuuuuuuuuuvvvvwwwwwwwwwwxxxxyyzzzzzzhtwy_s____aaaaaaaaaaaaaaaaaaaaaaaaeeeeeeee" +
		"eeeeeeeeiiiioooooooooooooooooooooooouuuuuuuuuuuuuuyyyyyyyy______"
)

// pairs are letters that are written with two.
var pairs = map[rune]string{'\u00df': "ss", '\u00e6': "ae", '\u0153': "oe", '\u00fe': "th", '\u1e9e': "ss", '\u0133': "ij"}

// others are letters that Unicode does not decompose.
var others = map[rune]byte{'\u018f': 'e', '\u0259': 'e', '\u0253': 'b', '\u0257': 'd', '\u025b': 'e', '\u0254': 'o'}

// Fold writes a text as it is compared: small letters without accents, words between single
// spaces, no apostrophes. A semicolon stays.
func Fold(text string) string { return string(appendFolded(nil, text)) }

func appendFolded(to []byte, text string) []byte {
	start := len(to)
	gap := false // a space is owed
	put := func(c byte) {
		if gap && len(to) > start && to[len(to)-1] != ';' {
			to = append(to, ' ')
		}
		gap = false
		to = append(to, c)
	}
	for i := 0; i < len(text); {
		c := text[i]
		if c < utf8.RuneSelf {
			i++
			switch {
			case c >= 'a' && c <= 'z', c >= '0' && c <= '9':
				put(c)
			case c >= 'A' && c <= 'Z':
				put(c | 0x20)
			case c == ';':
				gap = false
				to = append(to, c)
			case c == '\'' || c == '`':
			default:
				gap = true
			}
			continue
		}
		r, size := utf8.DecodeRuneInString(text[i:])
		i += size
		switch {
		case plain(r) != 0:
			put(plain(r))
		case pairs[unicode.ToLower(r)] != "":
			for _, c := range []byte(pairs[unicode.ToLower(r)]) {
				put(c)
			}
		case unicode.Is(unicode.Mn, r), strings.ContainsRune("\u2018\u2019\u02bb\u02bc\u02be\u02bf\u00b4", r):
		case !unicode.IsLetter(r) && !unicode.Is(unicode.Mc, r) && !unicode.IsDigit(r):
			gap = true
		default:
			var b [utf8.UTFMax]byte
			for _, c := range b[:utf8.EncodeRune(b[:], unicode.ToLower(r))] {
				put(c)
			}
		}
	}
	return to
}

// plain is the letter without its accent, 0 if it has none.
func plain(r rune) byte {
	c := byte('_')
	switch {
	case r >= latinFrom && int(r)-latinFrom < len(latin):
		c = latin[r-latinFrom]
	case r >= moreFrom && int(r)-moreFrom < len(more):
		c = more[r-moreFrom]
	}
	if c == '_' {
		return others[r]
	}
	return c
}
