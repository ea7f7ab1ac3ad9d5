package org.wadeplan.hazards.limits;

import java.util.Locale;
import java.util.regex.Pattern;

/** How hard English text is to follow aloud, and how long it takes to say. */
public final class ReadingEase {

    public static final String SOURCE = "Flesch reading ease and Flesch-Kincaid grade (from memory)";

    /** Words a minute when reading aloud to a crew; common practice. */
    public static final int WORDS_PER_MINUTE_ALOUD = 140;

    private static final Pattern GAPS = Pattern.compile("\\s+");
    private static final Pattern SENTENCE_ENDS = Pattern.compile("[.!?:]+(\\s|$)");
    private static final Pattern NOT_LETTERS = Pattern.compile("[^a-z]");
    private static final Pattern VOWEL_GROUPS = Pattern.compile("[aeiouy]+");
    private static final Pattern SILENT_END = Pattern.compile("(?<=[^aeiouyl])e$|(?<=[^aeiouydt])ed$");

    /**
     * The three numbers that both formulas need.
     *
     * @param words at least 1
     * @param sentences at least 1
     * @param syllables at least as many as words
     */
    public record Count(int words, int sentences, int syllables) {}

    private ReadingEase() {}

    /** School grade that the text suits: 0.39 words a sentence + 11.8 syllables a word - 15.59. */
    public static Estimate grade(Count count) {
        return counted(count)
                .then(() ->
                        0.39 * count.words() / count.sentences() + 11.8 * count.syllables() / count.words() - 15.59);
    }

    /** Ease: about 100 is very easy, 30 very hard. 206.835 - 1.015 words a sentence - 84.6 syllables a word. */
    public static Estimate ease(Count count) {
        return counted(count)
                .then(() ->
                        206.835 - 1.015 * count.words() / count.sentences() - 84.6 * count.syllables() / count.words());
    }

    /** Words between gaps, sentences by their full stops (at least one), syllables by groups of vowels: a close guess. */
    public static Count count(String englishText) {
        int syllables = 0;
        for (String word : GAPS.split(englishText.strip(), -1)) {
            syllables += syllables(word);
        }
        int sentences = (int) SENTENCE_ENDS.matcher(englishText).results().count();
        return new Count(words(englishText), Math.max(1, sentences), syllables);
    }

    /** Pieces between gaps that hold a letter or a digit: a lone dash is no word. */
    public static int words(String text) {
        return (int) GAPS.splitAsStream(text)
                .filter(piece -> piece.chars().anyMatch(Character::isLetterOrDigit))
                .count();
    }

    /** Whole minutes, rounded up, at {@value #WORDS_PER_MINUTE_ALOUD} words a minute. */
    public static int aloudMin(int words) {
        return (words + WORDS_PER_MINUTE_ALOUD - 1) / WORDS_PER_MINUTE_ALOUD;
    }

    private static int syllables(String word) {
        String letters = NOT_LETTERS.matcher(word.toLowerCase(Locale.ROOT)).replaceAll("");
        if (letters.isEmpty()) {
            return word.chars().anyMatch(Character::isLetterOrDigit) ? 1 : 0;
        }
        String spoken = SILENT_END.matcher(letters).replaceAll("");
        return Math.max(1, (int) VOWEL_GROUPS.matcher(spoken).results().count());
    }

    private static Span counted(Count count) {
        return Span.of("the reading formula")
                .within("Number of words", count.words(), 1, Integer.MAX_VALUE)
                .within("Number of sentences", count.sentences(), 1, Integer.MAX_VALUE);
    }
}
