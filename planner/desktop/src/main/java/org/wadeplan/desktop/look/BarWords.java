package org.wadeplan.desktop.look;

import java.util.Optional;
import javafx.scene.control.Label;

/** Words inside a bar of a picture: the whole label, or its first word, or nothing, since half a word helps nobody. */
public final class BarWords {

    private static final double USUAL = 0.88;
    private static final double SMALL = 0.7;

    private BarWords() {}

    /** A label of the bar's size with what fits, its first word in smaller letters at the least; empty where nothing does. */
    public static Optional<Label> fitting(String words, double width, double height, double em) {
        String first = words.split(" ", 2)[0];
        if (fits(words, width, em, USUAL)) {
            return Optional.of(label(words, width, height));
        }
        if (fits(first, width, em, USUAL)) {
            return Optional.of(label(first, width, height));
        }
        if (fits(first, width, em, SMALL)) {
            Label small = label(first, width, height);
            small.getStyleClass().add("bar-words-small");
            return Optional.of(small);
        }
        return Optional.empty();
    }

    private static Label label(String words, double width, double height) {
        Label label = new Label(words);
        label.getStyleClass().add("bar-words");
        label.setMouseTransparent(true);
        label.setManaged(false);
        label.resizeRelocate(0, 0, width, height);
        return label;
    }

    private static boolean fits(String words, double width, double em, double size) {
        double letters = words.chars().mapToDouble(BarWords::widthEm).sum();
        return (letters + 0.5) * size * em < width;
    }

    /** Width of a letter in multiples of its size: capitals are wider, and the names of waters are capitals. */
    private static double widthEm(int letter) {
        if (letter == ' ' || letter == '-') {
            return 0.36;
        }
        return Character.isUpperCase(letter) || Character.isDigit(letter) || letter == '→' ? 0.7 : 0.6;
    }
}
