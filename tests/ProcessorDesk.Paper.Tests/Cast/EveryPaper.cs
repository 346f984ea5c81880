using ProcessorDesk.Paper;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Cast;

/// <summary>Every paper by name, ordinary and extreme, with the margin it keeps.</summary>
internal static class EveryPaper
{
    private const double Ticket = 10;
    private const double Letter = 34;

    private static readonly Dictionary<string, (double Margin, Func<byte[]> Draw)> Papers = new()
    {
        ["carcass tickets"] = (Ticket, () => CarcassTicket.Draw([TicketSamples.Carcass, TicketSamples.CarcassOnHold, TicketSamples.CarcassExtreme])),
        ["lug tickets"] = (Ticket, () => LugTicket.Draw([TicketSamples.Lug, TicketSamples.LugExtreme])),
        ["batch tickets"] = (Ticket, () => BatchTicket.Draw([TicketSamples.Batch, TicketSamples.BatchExtreme])),
        ["part tickets"] = (Ticket, () => PartTicket.Draw([TicketSamples.Part, TicketSamples.PartExtreme])),
        ["box labels, 4 by 6"] = (Ticket, () => BoxLabel.Draw([BoxSamples.Ordinary, BoxSamples.Named, BoxSamples.Extreme], LabelStock.FourBySix)),
        ["box labels, 4 by 2"] = (9, () => BoxLabel.Draw([BoxSamples.Ordinary, BoxSamples.Named, BoxSamples.Extreme], LabelStock.FourByTwo)),
        ["claim ticket"] = (24, () => ClaimTicket.Draw([TicketSamples.Claim])),
        ["claim ticket with a link"] = (24, () => ClaimTicket.Draw([TicketSamples.ClaimWithLink])),
        ["claim ticket, extreme"] = (24, () => ClaimTicket.Draw([TicketSamples.ClaimExtreme])),
        ["cut sheet"] = (28, () => CutSheet.Draw([LetterSamples.Cut])),
        ["cut sheet, extreme"] = (28, () => CutSheet.Draw([LetterSamples.CutExtreme])),
        ["batch sheet"] = (28, () => BatchSheet.Draw([KitchenSamples.Ring, KitchenSamples.Fresh])),
        ["batch sheet, extreme"] = (28, () => BatchSheet.Draw([KitchenSamples.Extreme])),
        ["trace"] = (Letter, () => TraceSheet.Draw(TraceSamples.Ordinary)),
        ["trace, extreme"] = (Letter, () => TraceSheet.Draw(TraceSamples.Extreme)),
        ["process record"] = (Letter, () => ProcessRecord.Draw([RecordSamples.Ring])),
        ["process record, extreme"] = (Letter, () => ProcessRecord.Draw([RecordSamples.Extreme])),
        ["invoice"] = (Letter, () => Invoice.Draw([InvoiceSamples.Ordinary])),
        ["second invoice"] = (Letter, () => Invoice.Draw([InvoiceSamples.Second])),
        ["second invoice, extreme"] = (Letter, () => Invoice.Draw([InvoiceSamples.SecondExtreme])),
        ["credit note"] = (Letter, () => Invoice.Draw([InvoiceSamples.CreditNote])),
        ["invoice, extreme"] = (Letter, () => Invoice.Draw([InvoiceSamples.Extreme])),
        ["pickup summary"] = (Letter, () => PickupSummary.Draw([PickupSamples.Ordinary])),
        ["pickup summary, second"] = (Letter, () => PickupSummary.Draw([PickupSamples.Second])),
        ["pickup summary, extreme"] = (Letter, () => PickupSummary.Draw([PickupSamples.Extreme])),
    };

    public static TheoryData<string> Names => [.. Papers.Keys];

    public static double Margin(string name) => Papers[name].Margin;

    public static byte[] Draw(string name) => Papers[name].Draw();
}
