namespace CushionService.Bulk;

/// <summary>The names that workers and their callers share. They are part of the contract.</summary>
internal static class OrderSubjects
{
    /// <summary>Orders to quote, in JSON.</summary>
    public const string Orders = "orders.quote";

    /// <summary>Quotes and problems, one for each order that can be read.</summary>
    public const string Answers = "orders.answers";

    /// <summary>Orders that cannot be read, or that no worker could answer, as they were sent.</summary>
    public const string Dead = "orders.dead";

    /// <summary>The stream of <see cref="Orders"/>; an order leaves it when it is answered.</summary>
    public const string OrderStream = "ORDERS";

    /// <summary>The stream of <see cref="Answers"/>.</summary>
    public const string AnswerStream = "ORDER_ANSWERS";

    /// <summary>The stream of <see cref="Dead"/>.</summary>
    public const string DeadStream = "ORDER_DEAD";

    /// <summary>The durable consumer that all workers share.</summary>
    public const string Consumer = "quote-workers";

    /// <summary>The header with the number that the stream has given an order.</summary>
    public const string Number = "Order-Number";

    /// <summary>The header with the id that the sender has given an order as its <see cref="MessageId"/>.</summary>
    public const string OrderId = "Order-Id";

    /// <summary>The header with the id of a message; the server knows duplicates by it.</summary>
    public const string MessageId = "Nats-Msg-Id";

    /// <summary>The header with the HTTP status that the order would have had in a call.</summary>
    public const string Status = "Status";

    /// <summary>The header with the code of a dead letter.</summary>
    public const string Code = "Code";
}
