package org.wadeplan.planner.pack.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * Presses a book into a PDF: A4, fonts embedded, running head and foot on each page, nothing fetched from anywhere.
 *
 * <p>The same book gives the same bytes: the document's dates are the book's, and its id is drawn from them.
 */
final class PdfPress {

    private static final String FONTS = "/org/wadeplan/planner/pack/font/";

    static {
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new OwnFontsOnly());
    }

    private final Templates templates;

    PdfPress(Templates templates) {
        this.templates = templates;
    }

    PressedPdf press(Book book) {
        try (PDDocument document = new PDDocument()) {
            laid(templates.fill("book", BookView.of(book)), document, renderer -> {
                paint(renderer);
                return renderer;
            });
            Watermark.across(document, book.sections());
            describe(document, book);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return new PressedPdf(out.toByteArray(), document.getNumberOfPages());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** How many pages a section takes, without making them. */
    int pages(Section section) {
        Book alone = new Book("", "", Instant.EPOCH, "", List.of(section));
        try (PDDocument document = new PDDocument()) {
            return laid(
                    templates.fill("book", BookView.of(alone)),
                    document,
                    renderer -> renderer.getRootBox().getLayer().getPages().size());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static void paint(PdfBoxRenderer renderer) {
        try {
            renderer.createPDFWithoutClosing();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static <T> T laid(String html, PDDocument document, Function<PdfBoxRenderer, T> use) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useUriResolver((base, uri) -> uri.startsWith("#") ? uri : "about:blank");
        builder.useFont(() -> font("DejaVuSansCondensed.ttf"), "Field", 400, FontStyle.NORMAL, true);
        builder.useFont(() -> font("DejaVuSansCondensed-Bold.ttf"), "Field", 700, FontStyle.NORMAL, true);
        builder.withHtmlContent(html, null);
        builder.usePDDocument(document);
        builder.toStream(OutputStream.nullOutputStream());
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                return use.apply(renderer);
            }
        }
    }

    static InputStream font(String file) {
        InputStream in = PdfPress.class.getResourceAsStream(FONTS + file);
        if (in == null) {
            throw new IllegalStateException("The program lacks its font " + file);
        }
        return in;
    }

    private static void describe(PDDocument document, Book book) {
        PDDocumentInformation facts = new PDDocumentInformation();
        facts.setTitle(book.title());
        facts.setCreator("Wadeplan");
        facts.setSubject(book.footer());
        facts.setCreationDate(calendar(book.madeAt()));
        facts.setModificationDate(calendar(book.madeAt()));
        document.setDocumentInformation(facts);
        document.getDocumentCatalog().setLanguage("en");
        document.setDocumentId(31L * book.title().hashCode()
                + book.footer().hashCode()
                + book.madeAt().toEpochMilli());
    }

    private static Calendar calendar(Instant at) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        calendar.setTimeInMillis(at.toEpochMilli());
        return calendar;
    }
}
