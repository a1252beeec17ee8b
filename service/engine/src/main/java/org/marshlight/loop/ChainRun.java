package org.marshlight.loop;

import java.util.List;
import java.util.function.Supplier;
import org.marshlight.compost.CompostOutcome;
import org.marshlight.contract.Notice;
import org.marshlight.crop.CropGrowth;
import org.marshlight.crop.CropOutcome;
import org.marshlight.digester.DigesterOutcome;
import org.marshlight.ethanol.EthanolOutcome;
import org.marshlight.feed.Account;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.WetlandOutcome;

/**
 * One pass of the chain; stages that were not run are null.
 *
 * @param soakedGreywater greywater that meets neither tank nor bed; null if there is none
 * @param otherAccounts books of processes that belong to no stage
 * @param returned what goes back to the tank
 * @param notices remarks of the loop itself
 * @param working works the steps of each stage that was run
 */
record ChainRun(
    DigesterOutcome digester,
    WetlandOutcome<CropGrowth> wetland,
    CropOutcome crop,
    EthanolOutcome ethanol,
    CompostOutcome compost,
    WaterStream soakedGreywater,
    List<Account> otherAccounts,
    Returned returned,
    List<Notice> notices,
    Supplier<List<StageWorking>> working) {}
