package org.wadeplan.planner.pack.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers every question for a font with the one that ships.
 *
 * <p>The library would otherwise search the machine for fonts, which takes seconds, writes a cache into the user's home
 * and makes pages depend on what happens to be installed.
 */
final class OwnFontsOnly implements FontMapper {

    private final TrueTypeFont font;

    OwnFontsOnly() {
        try (InputStream in = PdfPress.font("DejaVuSansCondensed.ttf")) {
            this.font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public @Nullable CIDFontMapping getCIDFont(
            String baseFont, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo system) {
        return null;
    }
}
