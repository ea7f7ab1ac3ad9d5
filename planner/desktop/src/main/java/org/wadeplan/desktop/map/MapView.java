package org.wadeplan.desktop.map;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.look.FactsView;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;

/** The map with the table of sites beside it. */
public final class MapView extends BorderPane {

    private final MapPane pane;
    private final FactsView facts;
    private final TableView<SiteRow> table = new TableView<>();
    private final CandidateView candidates;

    public MapView(
            MapViewModel model,
            CandidateViewModel candidates,
            ReadOnlyObjectProperty<List<Fact>> facts,
            CommandList commands,
            TextSize text) {
        this.facts = new FactsView("site-facts", facts, "map.chooseSite");
        this.candidates = new CandidateView(candidates, commands.named("reach.search"), text);
        pane = new MapPane(model, candidates, text);
        BorderPane picture = new BorderPane(pane);
        picture.setTop(tools(commands));
        picture.setBottom(new VBox(text.shownWithKey(key()), foot(model, candidates)));
        picture.setMinWidth(0);
        SplitPane beside = new SplitPane(sites(model, text), this.facts);
        beside.setOrientation(Orientation.VERTICAL);
        beside.setDividerPositions(0.62);
        SplitPane split = new SplitPane(picture, tabs(beside, candidates));
        split.setDividerPositions(0.54);
        setCenter(split);
        setId("map-screen");
    }

    /** In the order that F6 goes through them. */
    public List<Region> panes() {
        return List.of(pane, table, facts, candidates.table(), candidates.facts());
    }

    private TabPane tabs(Node sites, CandidateViewModel model) {
        Tab listed = new Tab(Words.of("map.tabSites"), sites);
        Tab proposed = new Tab(Words.of("map.tabCandidates"), candidates);
        TabPane tabs = new TabPane(listed, proposed);
        tabs.setId("map-tabs");
        tabs.setAccessibleText(Words.of("map.tabsSpoken"));
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        model.reportProperty().addListener((property, before, now) -> {
            if (now.isPresent()) {
                tabs.getSelectionModel().select(proposed);
            }
        });
        return tabs;
    }

    private static FlowPane tools(CommandList commands) {
        FlowPane tools = new FlowPane();
        tools.getStyleClass().add("tools-wrapping");
        for (String id :
                List.of("picture.in", "picture.out", "picture.all", "picture.selected", "site.previous", "site.next")) {
            tools.getChildren().add(CommandMenus.button(commands.named(id)));
        }
        return tools;
    }

    private static FlowPane key() {
        FlowPane key = new FlowPane();
        key.getStyleClass().add("key");
        for (Mark mark : List.of(Mark.PLANNED, Mark.AWAITING, Mark.NOT_PLANNED, Mark.UNDECIDED, Mark.RESERVE)) {
            Label label = new Label(Words.of("mark." + mark.name()), mark.shape());
            key.getChildren().add(label);
        }
        key.getChildren().add(swatch("key-refused", "map.keyRefused"));
        key.getChildren().add(swatch("key-stream", "map.keyStream"));
        key.getChildren().add(swatch("key-reach", "map.keyReach"));
        key.getChildren().add(swatch("key-candidate", "map.keyCandidate"));
        key.getChildren().add(swatch("key-ruled-out", "map.keyRuledOut"));
        return key;
    }

    private static Label swatch(String style, String words) {
        Region box = new Region();
        box.getStyleClass().addAll("swatch", style);
        return new Label(Words.of(words), box);
    }

    private FlowPane foot(MapViewModel model, CandidateViewModel candidates) {
        Label place = new Label(Words.of("map.pointAt"));
        place.setId("map-place");
        Label system = new Label();
        system.setId("map-crs");
        model.pictureProperty()
                .addListener((property, before, now) ->
                        system.setText(now.map(MapPicture::crs).orElse("")));
        model.pictureProperty().get().ifPresent(shown -> system.setText(shown.crs()));
        pane.addEventHandler(
                MouseEvent.MOUSE_MOVED,
                move -> place.setText(model.coordinates(move.getX(), move.getY())
                        + candidates
                                .ruledOutAt(move.getX(), move.getY())
                                .map(why -> "   " + why)
                                .orElse("")));
        pane.addEventHandler(MouseEvent.MOUSE_EXITED, leave -> place.setText(Words.of("map.pointAt")));
        FlowPane foot = new FlowPane(place, system);
        foot.getStyleClass().add("foot");
        return foot;
    }

    private TableView<SiteRow> sites(MapViewModel model, TextSize text) {
        table.setId("site-table");
        table.setAccessibleText(Words.of("map.tableSpoken"));
        table.setPlaceholder(Tables.empty("map.noSites"));
        table.getColumns().add(Tables.column("site.code", 5.2, SiteRow::site));
        table.getColumns().add(Tables.markColumn("site.state", 11, SiteRow::mark, SiteRow::state));
        table.getColumns().add(Tables.column("site.days", 6.6, SiteRow::days));
        table.getColumns().add(Tables.column("site.crews", 3.4, SiteRow::crews));
        table.getColumns().add(Tables.column("site.method", 8, SiteRow::method));
        table.getColumns().add(Tables.column("site.rule", 3, SiteRow::rule));
        table.getColumns().add(Tables.column("site.stream", 4.6, SiteRow::stream));
        table.getColumns().add(Tables.column("site.name", 8, SiteRow::name));
        Tables.growWith(table, text);
        Tables.follow(
                table, model.rowsProperty(), model.selectedProperty(), SiteRow::site, row -> model.select(row.site()));
        return table;
    }
}
