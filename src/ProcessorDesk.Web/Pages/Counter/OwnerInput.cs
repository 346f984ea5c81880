using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.ModelBinding.Validation;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Whose meat it is, as typed: somebody found, or somebody new.</summary>
public sealed class OwnerInput
{
    /// <summary>Any part of a name or phone.</summary>
    public string Search { get; set; } = "";

    /// <summary>The owner found; null for a new one.</summary>
    public int? Id { get; set; }

    public string Name { get; set; } = "";

    public string Phone { get; set; } = "";

    public string Address { get; set; } = "";

    public string Email { get; set; } = "";

    public bool NameOnPacks { get; set; }

    /// <summary>Who is chosen; put in by the page, never sent.</summary>
    [BindNever, ValidateNever]
    public OwnerMatch? Chosen { get; set; }

    /// <summary>Who it may be; null where nobody was looked for.</summary>
    [BindNever, ValidateNever]
    public OwnerMatches? Matches { get; set; }

    /// <summary>Something was typed to look for, and nobody is chosen or being added: Enter means "find".</summary>
    public bool IsLooking => Id is null && Search.Trim() != "" && Name.Trim() == "" && Phone.Trim() == "";

    /// <summary>Looks for who was typed: one alone is chosen, nobody makes what was typed the beginning of a new owner.</summary>
    public void Look(RecordsContext records)
    {
        Matches = new OwnerMatches(Search.Trim(), OwnerMatch.Find(records, Search));
        if (Matches.Found is [var only])
            Id = only.Id;
        if (Matches.Found.Count > 0 || Search.Trim() == "")
            return;
        if (Owner.DigitsOf(Search).Length >= 7)
            Phone = Search.Trim();
        else
            Name = Search.Trim();
    }

    public void Check(ModelStateDictionary state, string prefix = "Input.Owner")
    {
        if (Id is not null)
            return;
        if (Name.Trim() == "")
            state.AddModelError($"{prefix}.Name", "Type the owner's name, or find the owner above.");
        if (Owner.DigitsOf(Phone).Length < 7)
            state.AddModelError($"{prefix}.Phone", "Type the owner's phone with at least seven digits.");
        if (Email.Trim() != "" && !Email.Contains('@', StringComparison.Ordinal))
            state.AddModelError($"{prefix}.Email", "An e-mail address has an @ in it. Type it again, or leave it empty.");
    }

    public TakenOwner Taken() => new(Id, Name, Phone, Address, Email, NameOnPacks);
}
