package words

import (
	"regexp"
	"testing"
)

// judging are words by which a page would vouch for what it has not seen, by language.
var judging = map[string]*regexp.Regexp{
	"en": regexp.MustCompile(`(?i)(?:^|\P{L})(safe|safely|compliant|compliance|pass(es|ed)?|fail(s|ed)?|approved|certified|ok|okay)(?:$|\P{L})`),
	"es": regexp.MustCompile(`(?i)(?:^|\P{L})(segur[oa]s?|conforme|aprobad[oa]s?|apt[oa]s?|certificad[oa]s?|ok)(?:$|\P{L})`),
	"fr": regexp.MustCompile(`(?i)(?:^|\P{L})(sûre?s?|conformes?|approuvée?s?|certifiée?s?|réussie?s?|échouée?s?|ok)(?:$|\P{L})`),
	"pt": regexp.MustCompile(`(?i)(?:^|\P{L})(segur[oa]s?|conformes?|aprovad[oa]s?|apt[oa]s?|certificad[oa]s?|ok)(?:$|\P{L})`),
}

// No text of a visit, and no finding, says that something is in order.
func TestVisit_VouchesForNothing(t *testing.T) {
	for _, c := range All() {
		language := c.Text(LanguageCode)
		words := judging[language]
		if words == nil {
			t.Fatalf("no words of %s", language)
		}
		for _, word := range map[string][]string{"en": {"It is safe.", "passed"}, "es": {"es segura", "conforme."}, "fr": {"c’est approuvé", "sûr"}, "pt": {"está seguro", "Aprovado"}}[language] {
			if words.FindString(word) == "" {
				t.Errorf("%s: %q is not found", language, word)
			}
		}
		texts := append([]string(nil), c.Findings...)
		texts = append(texts, c.Visit...)
		for _, text := range texts {
			if found := words.FindString(text); found != "" {
				t.Errorf("%s: %q in %q", language, found, text)
			}
		}
	}
}
