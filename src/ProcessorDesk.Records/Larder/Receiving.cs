using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Records;

/// <summary>Lots as they come in at the back door, and as they run out.</summary>
public static class Receiving
{
    /// <summary>Its result is the lot's id.</summary>
    public static Outcome ReceiveLot(this RecordsContext records, LotReceipt receipt, Act act)
    {
        var ingredient = records.Ingredients.Single(one => one.Id == receipt.IngredientId);
        var findings = new List<Finding>();
        if (string.IsNullOrWhiteSpace(receipt.LotCode))
            findings.Add(new Finding("LotCode", "Type the lot as it stands on the box; the day it came where there is none."));
        if (ingredient.GoesByPiece ? receipt.Pieces <= 0 : !receipt.Amount.IsPositive)
            findings.Add(new Finding("Amount", "Type how much came in, more than nothing."));
        findings.AddRange(CureStrength.Check(receipt.Nitrite, receipt.Nitrate));
        if (ingredient.Kind == IngredientKind.Cure && receipt.Nitrite.IsZero && receipt.Nitrate.IsZero)
            findings.Add(new Finding("Nitrite", "A cure states its nitrite or its nitrate. Copy it from the label of this lot.", "0 %"));
        if (findings.Count > 0)
            return Outcome.Refused(findings);
        var lot = new IngredientLot(receipt, act.Now, act.Hand.Id);
        records.IngredientLots.Add(lot);
        records.SaveChanges();
        return Outcome.Done(lot.Id);
    }

    /// <summary>Nothing of it is left, whatever the sums say: scales differ, and bags are emptied.</summary>
    public static Outcome UseUpLot(this RecordsContext records, int lotId, Act act)
    {
        var lot = records.IngredientLots.Single(one => one.Id == lotId);
        if (lot.StruckAt is not null || lot.UsedUpAt is not null)
            return Outcome.Refused(new Finding("", $"Lot {lot.LotCode} is not on the shelf any more."));
        lot.UseUp(act.Now, act.Hand.Id);
        return Outcome.Done(lotId);
    }

    /// <summary>Some of it is there after all.</summary>
    public static Outcome FindMoreOfLot(this RecordsContext records, int lotId, Act act)
    {
        var lot = records.IngredientLots.Single(one => one.Id == lotId);
        if (lot.StruckAt is not null || lot.UsedUpAt is null)
            return Outcome.Refused(new Finding("", $"Lot {lot.LotCode} is not marked as used up."));
        lot.FoundMore();
        return Outcome.Done(lotId);
    }

    /// <summary>It was written down wrongly. Only while nothing of it is noted as used.</summary>
    public static Outcome StrikeLot(this RecordsContext records, int lotId, string? because, Act act)
    {
        var lot = records.IngredientLots.Single(one => one.Id == lotId);
        if (lot.StruckAt is not null)
            return Outcome.Refused(new Finding("", "This was struck out before."));
        if (records.LotUses.Any(use => use.LotId == lotId && use.StruckAt == null))
            return Outcome.Refused(new Finding("", $"Lot {lot.LotCode} is noted in a load. Strike that out first, at the load."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is struck out."));
        lot.StrikeOut(because, act.Now, act.Hand.Id);
        return Outcome.Done(lotId);
    }
}
