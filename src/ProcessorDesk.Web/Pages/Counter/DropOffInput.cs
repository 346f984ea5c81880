using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A whole drop-off as typed.</summary>
public sealed class DropOffInput
{
    /// <summary>The job the animals join; null for a new one.</summary>
    public int? JobId { get; set; }

    public OwnerInput Owner { get; set; } = new();

    public List<PersonInput> People { get; set; } = PersonInput.Each();

    public List<AnimalInput> Animals { get; set; } = [new()];

    public OrderInput Order { get; set; } = new();

    public DepositInput Deposit { get; set; } = new();

    /// <summary>All of it, read; problems are noted on the fields.</summary>
    public DropOff Read(ModelStateDictionary state, ShopDay shop)
    {
        var animals = Animals.Select((animal, i) => animal.Read(state, $"Input.Animals[{i}]", shop.Settings.TagRule, shop.Today)).ToList();
        if (JobId is not null)
            return new DropOff(Owner.Taken(), [], animals, null, Money.Zero, Deposit.Method);
        Owner.Check(state);
        var people = PersonInput.Read(People, state, "Input.People").ToList();
        return new DropOff(Owner.Taken(), people, animals, Order.Read(state, shop.Today, Animals), Deposit.Read(state), Deposit.Method);
    }

    /// <summary>Name, phone, tag and weight alone must be right; of the rest, what can be read is kept, and it is completed later.</summary>
    public DropOff ReadLeast(ModelStateDictionary state, ShopDay shop)
    {
        Owner.Check(state);
        var animals = Animals.Select((animal, i) => animal.ReadLeast(state, $"Input.Animals[{i}]", shop.Settings.TagRule, shop.Today)).ToList();
        var rest = new ModelStateDictionary();
        var order = Order.Read(rest, shop.Today, Animals);
        var people = PersonInput.Read(People, new ModelStateDictionary(), "").ToList();
        return new DropOff(Owner.Taken(), people, animals, rest.IsValid ? order with { Cuts = Order.SaysCuts ? order.Cuts : [] } : null, Deposit.Read(state), Deposit.Method, IsWhole: false);
    }
}
