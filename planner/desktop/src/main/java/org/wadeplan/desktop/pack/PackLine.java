package org.wadeplan.desktop.pack;

import java.util.Locale;
import org.wadeplan.desktop.session.WrittenPack;
import org.wadeplan.desktop.words.Words;

/** A file of the pack, to be written or written; everything in words. */
public record PackLine(String file, String what, String pages, String size, String state) {

    static PackLine expected(String file, String what) {
        return new PackLine(file, what, "", "", Words.of("pack.toWrite"));
    }

    static PackLine written(WrittenPack.WrittenFile file) {
        String pages = file.pages().isPresent() ? Integer.toString(file.pages().getAsInt()) : "";
        String size = String.format(Locale.ROOT, "%.0f kB", Math.max(1, file.bytes() / 1000.0));
        return new PackLine(file.name(), file.what(), pages, size, Words.of("pack.isWritten"));
    }
}
