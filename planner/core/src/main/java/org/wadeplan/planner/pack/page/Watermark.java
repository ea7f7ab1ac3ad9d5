package org.wadeplan.planner.pack.page;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.util.Matrix;

/** Writes NOT AUTHORISED across the pages of sections that lack a permit or a consent, in outline letters. */
final class Watermark {

    private static final String WORDS = "NOT AUTHORISED";
    private static final float SIZE_PT = 74;
    private static final float STROKE_PT = 0.6f;
    private static final double SLANT_RAD = Math.toRadians(54);

    private Watermark() {}

    static void across(PDDocument document, List<Section> sections) throws IOException {
        if (sections.stream().allMatch(Section::authorised)) {
            return;
        }
        Map<Integer, Section> starts = starts(document, sections);
        try (InputStream in = PdfPress.font("DejaVuSansCondensed-Bold.ttf")) {
            PDFont font = PDType0Font.load(document, in, true);
            Section current = sections.get(0);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                current = starts.getOrDefault(page, current);
                if (!current.authorised()) {
                    stamp(document, document.getPage(page), font);
                }
            }
        }
    }

    /** The outline has one entry for each section, in order; it tells the page where the section starts. */
    private static Map<Integer, Section> starts(PDDocument document, List<Section> sections) throws IOException {
        Map<Integer, Section> starts = new HashMap<>();
        PDDocumentOutline outline = document.getDocumentCatalog().getDocumentOutline();
        int index = 0;
        for (PDOutlineItem item : outline.children()) {
            PDPage page = item.findDestinationPage(document);
            starts.put(document.getPages().indexOf(page), sections.get(index++));
        }
        return starts;
    }

    private static void stamp(PDDocument document, PDPage page, PDFont font) throws IOException {
        float widthPt = font.getStringWidth(WORDS) / 1000 * SIZE_PT;
        double middleX = page.getMediaBox().getWidth() / 2;
        double middleY = page.getMediaBox().getHeight() / 2;
        double startX = middleX - Math.cos(SLANT_RAD) * widthPt / 2 + Math.sin(SLANT_RAD) * SIZE_PT / 3;
        double startY = middleY - Math.sin(SLANT_RAD) * widthPt / 2 - Math.cos(SLANT_RAD) * SIZE_PT / 3;
        try (PDPageContentStream content = new PDPageContentStream(document, page, AppendMode.PREPEND, true, true)) {
            content.saveGraphicsState();
            content.beginText();
            content.setFont(font, SIZE_PT);
            content.setRenderingMode(RenderingMode.STROKE);
            content.setLineWidth(STROKE_PT);
            content.setStrokingColor(0.45f);
            content.setTextMatrix(Matrix.getRotateInstance(SLANT_RAD, (float) startX, (float) startY));
            content.showText(WORDS);
            content.endText();
            content.restoreGraphicsState();
        }
    }
}
