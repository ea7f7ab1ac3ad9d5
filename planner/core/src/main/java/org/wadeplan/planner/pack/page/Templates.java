package org.wadeplan.planner.pack.page;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Fills the page templates that ship with the program. A template that names a value its view lacks is a bug. */
final class Templates {

    private final Map<String, Template> compiled = new ConcurrentHashMap<>();

    /** The template of that name filled from a view record. Values are escaped; {@code {{{markup}}}} is not. */
    String fill(String name, Object view) {
        return compiled.computeIfAbsent(name, Templates::compile).execute(view);
    }

    /** A resource beside the templates, as text. */
    static String text(String file) {
        try (InputStream in = stream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Template compile(String name) {
        try (Reader source = reader(name)) {
            return Mustache.compiler()
                    .escapeHTML(true)
                    .emptyStringIsFalse(true)
                    .withLoader(Templates::reader)
                    .compile(source);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Reader reader(String name) {
        return new InputStreamReader(stream(name + ".html"), StandardCharsets.UTF_8);
    }

    private static InputStream stream(String file) {
        InputStream in = Templates.class.getResourceAsStream(file);
        if (in == null) {
            throw new IllegalStateException("The program lacks its page template " + file);
        }
        return in;
    }
}
