package words

// Language is one that the page can be shown in.
type Language struct{ Code, Name string }

// Languages are all of them, each by its own name; their texts lie beside the program.
var Languages = [...]Language{{"en", "English"}, {"es", "Español"}, {"fr", "Français"}, {"pt", "Português"}}
