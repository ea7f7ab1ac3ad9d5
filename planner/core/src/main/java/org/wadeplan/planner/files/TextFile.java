package org.wadeplan.planner.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads a whole text file as strict UTF-8, with or without a byte-order mark. */
final class TextFile {

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TextFile() {}

    /** The text without its byte-order mark; or why there is none. */
    static Checked<String> read(Path file, String name) {
        Optional<Problem> unfit = FileLimit.TEXT.refusal(file, name);
        if (unfit.isPresent()) {
            return Checked.failed(unfit.get());
        }
        try {
            return decoded(Files.readAllBytes(file), name);
        } catch (IOException unreadable) {
            return Checked.failed(FileLimit.unreadable(name));
        }
    }

    private static Checked<String> decoded(byte[] bytes, String name) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        if (result.isError() || looksLikeUtf16(bytes)) {
            return Checked.failed(notUtf8(name, lineOf(bytes, in.position())));
        }
        String text = out.flip().toString();
        return Checked.of(!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
    }

    /** Zero bytes are valid UTF-8, but no text has them: every second byte is one in UTF-16. */
    private static boolean looksLikeUtf16(byte[] bytes) {
        return bytes.length > 1 && (bytes[0] == 0 || bytes[1] == 0);
    }

    private static int lineOf(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    private static Problem notUtf8(String name, int line) {
        return Problem.error(
                "not-utf8",
                SourcePlace.line(name, line),
                "the file is not UTF-8 text: the first character that cannot be read is on this line",
                "UTF-8",
                "save it again as UTF-8 (in a spreadsheet: CSV UTF-8)");
    }
}
