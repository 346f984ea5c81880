using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>Allotments of one product at one version of its formula: what may become a batch together.</summary>
public sealed record WaitingProduct(int ProductId, string Product, int FormulaNumber, IReadOnlyList<WaitingProduct.Line> Lines)
{
    public string Anchor => FormattableString.Invariant($"waiting-{ProductId}-{FormulaNumber}");

    /// <param name="Held">Why it may not go into a batch, a reason a line; empty where it may.</param>
    public sealed record Line(WaitingAllotment Of, IReadOnlyList<string> Held)
    {
        public string Animals => string.Join(", ", Of.Species.Select(Wording.Of));
    }
}
