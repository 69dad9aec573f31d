package org.barreltally.shows.rest;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Set;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Award;
import org.barreltally.shows.DrawerCount;
import org.barreltally.shows.LookAt;
import org.barreltally.shows.Payment;
import org.barreltally.shows.Promises;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.Step;
import org.barreltally.shows.TableLine;
import org.barreltally.shows.ToDo;

/**
 * One show with all that is known of it.
 *
 * @param next the states that may follow
 * @param paid what was paid to the organiser and did not come back
 * @param floatPackedOut change money that went along with its pack-outs; null for none
 * @param reserved what is still promised to it
 * @param table what the ledger tells of its table
 * @param drawers the newest count of each cash drawer
 * @param toLookAt what was taken as a fact and does not fit
 * @param toDos what is not done yet
 */
public record ShowDetails(
    @JsonUnwrapped ShowView show,
    Set<ShowState> next,
    List<Step> steps,
    Money paid,
    List<Payment> payments,
    Money floatPackedOut,
    List<Promises.Promise> reserved,
    List<TableLine> table,
    List<DrawerCount> drawers,
    List<LookAt> toLookAt,
    List<ToDo> toDos,
    List<Award> awards) {}
