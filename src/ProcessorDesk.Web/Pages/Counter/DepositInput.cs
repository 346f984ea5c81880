using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What is paid at the drop-off, as typed; empty for nothing.</summary>
public sealed class DepositInput
{
    public string Amount { get; set; } = "";

    public PaymentMethod Method { get; set; } = PaymentMethod.Cash;

    public Money Read(ModelStateDictionary state, string prefix = "Input.Deposit") =>
        Amount.Trim() == "" ? Money.Zero : state.Read(MoneyText.Parse(Amount), $"{prefix}.Amount");
}
