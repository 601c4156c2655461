package words

// Texts around a class's questions; the questions themselves are in package words' cards.
const (
	LessonStage Key = lessonKeys + iota
	LessonListTitle
	LessonListHelp
	LessonLook
	LessonGuess
	LessonSee
	LessonWhy
	LessonChange
	LessonStep // args: question, how many
	LessonGuessName
	LessonGuessHelp
	LessonDrawHelp
	LessonNoGuess
	LessonSays  // args: a guess with its unit
	LessonWrong // args: least, most
	LessonToGuess
	LessonSet
	LessonMore // args: guess, outcome, difference
	LessonLess // args: the same
	LessonNear // args: guess, outcome
	LessonCurveGap
	LessonPick
	LessonAgainLook
	LessonToWhy
	LessonNextLine
	LessonNext
	LessonAgain
	LessonAll
	LessonHidden
	LessonKept
	LessonYours
	LessonTrue
	LessonMoreHouse
	LessonBig
	keyCount
)
