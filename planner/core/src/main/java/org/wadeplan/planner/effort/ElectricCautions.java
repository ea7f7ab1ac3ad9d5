package org.wadeplan.planner.effort;

import java.util.List;

/** What stands beside every voltage that this program shows. */
public final class ElectricCautions {

    public static final List<String> ALWAYS = List.of(
            "Electricity and water kill. Licensed operator, tested gear and insulated gloves, and one caller for "
                    + "\"on\" and \"off\"; current off when anyone stumbles, reaches into the water or calls stop.",
            "Start low. Test below the reach; fish must right themselves quickly. If they do not, turn down or stop. "
                    + "Your agency's code and the maker's manual go before this page.");

    private ElectricCautions() {}
}
