using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>How an animal is to be divided, as typed: each job's fraction, and perhaps another owner's.</summary>
public sealed class SharesInput
{
    public List<ShareInput> Shares { get; set; } = [];

    /// <summary>Another owner, with a new job for this share; left empty where only the fractions change.</summary>
    public OwnerInput Owner { get; set; } = new();

    /// <summary>The other owner's fraction.</summary>
    public string Fraction { get; set; } = "";

    public bool HasAnother => Owner.Id is not null || Owner.Name.Trim() != "" || Fraction.Trim() != "";

    public SharesFacts Read(ModelStateDictionary state)
    {
        var each = Shares.Select((share, i) => (share.JobId, Fraction(state, share.Fraction, $"Input.Shares[{i}].Fraction"))).ToList();
        if (!HasAnother)
            return new SharesFacts(each, null);
        Owner.Check(state);
        return new SharesFacts(each, Fraction(state, this.Fraction, "Input.Fraction"));

        static Ratio Fraction(ModelStateDictionary state, string text, string field)
        {
            var fraction = state.Read(RatioText.Parse(text), field);
            if (!state.HasProblem(field) && (fraction.Sign <= 0 || fraction > Ratio.One || fraction.Denominator > 1000))
                state.AddModelError(field, "A share is more than 0 and at most 1. Type it as 1, 1/2 or 1/4.");
            return fraction;
        }
    }
}

/// <summary>One job's fraction as typed.</summary>
public sealed class ShareInput
{
    public int JobId { get; set; }

    public string Fraction { get; set; } = "";
}

/// <summary>The fractions read; the other owner's is null where there is none.</summary>
public sealed record SharesFacts(IReadOnlyList<(int JobId, Ratio Fraction)> Each, Ratio? Another);
