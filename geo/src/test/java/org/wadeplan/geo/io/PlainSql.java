package org.wadeplan.geo.io;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Looks into a GeoPackage with nothing but SQL, so that tests do not trust the reader they test. */
final class PlainSql {

    private PlainSql() {}

    static List<String> rows(Path file, String query) throws SQLException {
        List<String> rows = new ArrayList<>();
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file.toUri());
                var statement = connection.createStatement();
                var result = statement.executeQuery(query)) {
            while (result.next()) {
                List<String> cells = new ArrayList<>();
                for (int i = 1; i <= result.getMetaData().getColumnCount(); i++) {
                    cells.add(result.getString(i));
                }
                rows.add(String.join("|", cells));
            }
        }
        return rows;
    }

    static void change(Path file, String command) throws SQLException {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file.toUri());
                var statement = connection.createStatement()) {
            statement.executeUpdate(command);
        }
    }
}
