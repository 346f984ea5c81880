using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>How much of a product the owner asked for.</summary>
public sealed record OwnersAsk(AskKind Kind, Weight Amount, Proportion Percent)
{
    /// <summary>"25.00 lb of your own meat in it".</summary>
    public string Words(ScaleDivision division) => Kind switch
    {
        AskKind.OwnLean => $"{division.Print(Amount)} of your own meat in it",
        AskKind.Finished => $"{division.Print(Amount)} ready to eat or cook",
        AskKind.Percent => $"{Percent.Print()} of your trim",
        AskKind.Rest => "the rest of your trim",
    };
}
